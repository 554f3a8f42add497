package cuelead.window.floor;

import cuelead.plan.CallSettings;
import cuelead.practice.CallsGo;
import cuelead.practice.Heard;
import cuelead.practice.Wish;
import cuelead.steer.Ask;
import cuelead.steer.KeyHelp;
import cuelead.steer.Moment;
import cuelead.steer.Order;
import cuelead.steer.PlayState;
import cuelead.steer.Told;
import cuelead.time.Tempo;
import cuelead.window.frame.Wrapping;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import javax.swing.BorderFactory;
import javax.swing.Box;
import javax.swing.BoxLayout;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JPanel;

/** What a hand can ask for below the floor: where in the dance, how fast, how it is called, and where the dance lies. */
final class FloorControls extends JPanel {
    private static final long serialVersionUID = 1L;
    private static final int GAP = 10;

    private final transient Consumer<Ask> ask;
    private final Map<Order, JButton> buttons = new EnumMap<>(Order.class);
    private final JPanel dance = new JPanel(new Wrapping(GAP));
    private final JPanel calls = new JPanel(new Wrapping(GAP));
    private final JPanel place = new JPanel(new Wrapping(GAP));
    private final TempoKnob tempo;
    private final Knob lead;
    private final Knob level;
    private final Knob dip;
    private final Knob voice;
    private final JComboBox<String> passes = new JComboBox<>();
    private int pass;
    private boolean isShowing;

    /** @param ask is given what is asked for */
    FloorControls(Consumer<Ask> ask) {
        this.ask = ask;
        setLayout(new BoxLayout(this, BoxLayout.Y_AXIS));
        setBorder(BorderFactory.createEmptyBorder(4, 16, 8, 16));
        tempo = new TempoKnob(ask);
        lead = new Knob("Lead", "15.5 beats", Order.SHORTER_LEAD, Order.LONGER_LEAD, ask);
        level = new Knob("Calls", "sections", Order.FEWER_CALLS, Order.MORE_CALLS, ask);
        dip = new Knob("Music under calls", "\u221224 dB", Order.LESS_DIP, Order.MORE_DIP, ask);
        voice = new Knob("Voice", "+6 dB", Order.SOFTER_VOICE, Order.LOUDER_VOICE, ask);
        passes.getAccessibleContext().setAccessibleName("Passes of the walkthrough");
        passes.addActionListener(chosen -> {
            if (!isShowing) {
                ask.accept(new Ask.ToPass(passes.getSelectedIndex() + 1 - pass));
            }
        });
        dance.add(button(Order.PAUSE_OR_GO_ON, "Pause"));
        dance.add(button(Order.PREVIOUS_SECTION, "Section back"));
        dance.add(button(Order.NEXT_SECTION, "Section on"));
        dance.add(button(Order.SECTION_AGAIN, "Section again"));
        dance.add(button(Order.REPEAT_SECTION, "Repeat section"));
        dance.add(button(Order.PREVIOUS_WALL, "Wall back"));
        dance.add(button(Order.NEXT_WALL, "Wall on"));
        dance.add(button(Order.FROM_THE_TOP, "From the top"));
        dance.add(button(Order.QUIT, "End"));
        calls.add(tempo);
        calls.add(lead);
        calls.add(level);
        calls.add(button(Order.ALL_CALLS_BACK, "All calls back"));
        calls.add(button(Order.FADE, "Fade"));
        JButton more = new JButton("More\u2026");
        more.getAccessibleContext().setAccessibleName("More controls");
        more.setToolTipText("Levels, sides, and where the dance lies on the song");
        more.addActionListener(pressed -> {
            place.setVisible(!place.isVisible());
            revalidate();
        });
        calls.add(more);
        place.add(dip);
        place.add(voice);
        place.add(button(Order.CLICK, "Click"));
        place.add(button(Order.OTHER_SIDE, "Calls left, right, both"));
        place.add(button(Order.COUNT_ONE_IS_NOW, "Count 1 is now"));
        place.add(button(Order.BEAT_EARLIER, "Beat earlier"));
        place.add(button(Order.BEAT_LATER, "Beat later"));
        place.add(button(Order.EIGHT_EARLIER, "Eight earlier"));
        place.add(button(Order.EIGHT_LATER, "Eight later"));
        place.add(button(Order.WALL_EARLIER, "Wall earlier"));
        place.add(button(Order.WALL_LATER, "Wall later"));
        place.add(button(Order.TAKE_REALIGNMENT_BACK, "As it lay before"));
        place.add(button(Order.HELP, "Keys"));
        place.setVisible(false);
        add(passes);
        add(Box.createVerticalStrut(6));
        add(dance);
        add(Box.createVerticalStrut(6));
        add(calls);
        add(Box.createVerticalStrut(6));
        add(place);
        passes.setVisible(false);
    }

    private JButton button(Order order, String words) {
        JButton button = Knob.pressed(words, words, order);
        button.addActionListener(pressed -> ask.accept(order));
        buttons.put(order, button);
        return button;
    }

    /** All orders that a hand can give. */
    Set<Order> orders() {
        return Set.copyOf(buttons.keySet());
    }

    /**
     * Something plays from now on.
     *
     * @param full     counts a minute at full speed
     * @param ofLesson its passes; empty for a dance
     */
    void begin(Tempo full, List<String> ofLesson) {
        tempo.full(full);
        isShowing = true;
        passes.removeAllItems();
        int number = 1;
        for (String told : ofLesson) {
            passes.addItem("Pass " + number++ + ": " + told);
        }
        isShowing = false;
        passes.setVisible(!ofLesson.isEmpty());
        revalidate();
    }

    /** Shows how it plays; said when that has changed. */
    void show(Moment moment) {
        PlayState state = moment.state();
        Set<Order> known = known(moment.keys());
        buttons.forEach((order, button) -> button.setEnabled(known.contains(order)));
        boolean isLesson = moment.pass().pass() > 0;
        button(Order.PAUSE_OR_GO_ON).setText(state.motion() == PlayState.Motion.PAUSED ? "Go on" : "Pause");
        button(Order.NEXT_SECTION).setText(isLesson ? "Pass on" : "Section on");
        button(Order.PREVIOUS_SECTION).setText(isLesson ? "Pass back" : "Section back");
        button(Order.SECTION_AGAIN).setText(isLesson ? "Pass again" : "Section again");
        button(Order.REPEAT_SECTION)
                .setText(state.repeating() == Heard.Repeating.NOTHING ? "Repeat section" : "Repeat no more");
        button(Order.FADE).setText(state.calls().fading() == CallSettings.Fading.STEADY ? "Fade" : "Fade no more");
        button(Order.CLICK).setText(state.click() == Wish.Click.SILENT ? "Click" : "No click");
        button(Order.OTHER_SIDE).setText(side(state.callsGo()));
        lead.show(Told.beats(state.calls().lead().toDecimal()));
        level.show(state.calls().level().word());
        dip.show(
                state.dip().db() == 0
                        ? "as loud"
                        : "\u2212" + Math.round(state.dip().db()) + " dB");
        voice.show(String.format(Locale.ROOT, "%+.0f dB", state.voiceDb()));
        state.pace()
                .ifPresent(pace ->
                        tempo.show(pace.own().beatsPerMinute() * pace.speed().ratio()));
        if (isLesson && passes.getSelectedIndex() != moment.pass().pass() - 1) {
            pass = moment.pass().pass();
            isShowing = true;
            passes.setSelectedIndex(Math.min(pass, passes.getItemCount()) - 1);
            isShowing = false;
        }
    }

    private JButton button(Order order) {
        return buttons.get(order);
    }

    private static Set<Order> known(KeyHelp keys) {
        return keys.lines().stream().flatMap(line -> line.orders().stream()).collect(Collectors.toSet());
    }

    private static String side(CallsGo callsGo) {
        return switch (callsGo) {
            case WITH_THE_MUSIC -> "Calls on both sides";
            case LEFT -> "Calls on the left";
            case RIGHT -> "Calls on the right";
            case APART -> "Calls in the ear";
        };
    }
}
