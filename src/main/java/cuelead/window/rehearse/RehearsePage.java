package cuelead.window.rehearse;

import cuelead.output.RoundTripNote;
import cuelead.practice.Wish;
import cuelead.rehearse.Progress;
import cuelead.rehearse.ReviewedCall;
import cuelead.report.Refused;
import cuelead.studio.PromptTimes;
import cuelead.studio.RehearsalDevices;
import cuelead.studio.RehearsalFolder;
import cuelead.studio.RehearsalScene;
import cuelead.studio.RehearsalSession.Recorded;
import cuelead.studio.RehearsalView.Order;
import cuelead.studio.RehearsalView.Question;
import cuelead.studio.ReviewedDance;
import cuelead.studio.ReviewedTake;
import cuelead.window.frame.Choices;
import cuelead.window.frame.Host;
import cuelead.window.frame.Page;
import cuelead.window.frame.Palette;
import java.awt.CardLayout;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.BiConsumer;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.SwingUtilities;

/** The page on which an instructor rehearses her own calling. Used on the thread of events. */
public final class RehearsePage implements Page {
    private static final String LISTENING = "Listening to your calls";

    /** What is in front. */
    private enum Card {
        BEFORE,
        DURING,
        AFTER
    }

    private final Host host;
    private final CardLayout cards = new CardLayout();
    private final JPanel page = new JPanel(cards);
    private final BeforePanel before;
    private final DuringPanel during = new DuringPanel(this::order);
    private final AfterPanel after = new AfterPanel(new AfterDeeds());
    private Optional<RehearsalRun> run = Optional.empty();
    private Optional<ReplayRun> replay = Optional.empty();
    private Optional<ReviewedTake> reviewed = Optional.empty();
    private boolean isFront;

    /** With nothing rehearsed. */
    public RehearsePage(Host host) {
        this.host = host;
        before = new BeforePanel(host, new BeforeDeeds());
        page.add(before, Card.BEFORE.name());
        page.add(during, Card.DURING.name());
        page.add(after, Card.AFTER.name());
        look(host.palette());
        turnTo(Card.BEFORE);
        host.inHand().listen(() -> {
            if (isFront) {
                refresh();
            }
        });
    }

    private void turnTo(Card card) {
        cards.show(page, card.name());
    }

    @Override
    public JComponent view() {
        return page;
    }

    @Override
    public void enter() {
        isFront = true;
        refresh();
        before.focus();
    }

    private Optional<Path> sheet() {
        return host.inHand().sheet().filter(file -> host.inHand().isDance());
    }

    /** The takes of the dance in hand. */
    private void refresh() {
        before.ready(sheet().isPresent());
        sheet().ifPresent(sheet -> {
            RehearsalFolder kept = PreparedDance.folder(sheet, host.means());
            try {
                before.show(kept.takes(), progress(kept), kept.dances());
            } catch (Refused refused) {
                host.tell(refused.getMessage());
            }
        });
    }

    private Progress progress(RehearsalFolder kept) {
        try {
            return kept.progress();
        } catch (Refused broken) {
            host.tell(broken.getMessage());
            return Progress.NONE;
        }
    }

    /** Does something with the dance in hand, if there is one. */
    private void withDance(BiConsumer<Path, Wish> deed) {
        host.hushOthers(this);
        fallSilent();
        host.tell("");
        sheet().ifPresent(sheet -> deed.accept(sheet, PreparedDance.wish(sheet, host.inHand())));
    }

    private void rehearse() {
        PreparedDance.HardCalls hard = before.hardCalls();
        withDance((sheet, wish) -> host.work(
                "Making the dance ready",
                progress -> PreparedDance.of(wish, host.means(), hard, progress, host::tell),
                this::begin));
    }

    private void begin(PreparedDance dance) {
        Choices choices = host.inHand().choices();
        RehearsalDevices devices =
                new RehearsalDevices(host.means().devices(), choices.microphone(), choices.device(), 0);
        PromptTimes prompts =
                new PromptTimes(dance.dance().calls(), dance.prompts().of(before.amount()));
        RehearsalRun now = new RehearsalRun(dance, prompts, devices, before.measures(), new Watching(dance));
        run = Optional.of(now);
        during.begin();
        turnTo(Card.DURING);
        now.start();
    }

    private void order(Order order) {
        run.ifPresent(now -> now.order(order));
    }

    /** Brings what a rehearsal tells to the thread of events. */
    private final class Watching implements RehearsalRun.Watcher {
        private final PreparedDance dance;
        private boolean isPlaying;

        Watching(PreparedDance dance) {
            this.dance = dance;
        }

        @Override
        public void asked(Question question) {
            SwingUtilities.invokeLater(() -> during.ask(question));
        }

        @Override
        public void shown(RehearsalScene scene) {
            during.show(scene);
            if (!isPlaying) {
                isPlaying = true;
                SwingUtilities.invokeLater(during::playing);
            }
        }

        @Override
        public void heard(float peak) {
            during.heard(peak);
        }

        @Override
        public void told(String sentence) {
            host.tell(sentence);
        }

        @Override
        public void over(Optional<Recorded> take) {
            SwingUtilities.invokeLater(() -> RehearsePage.this.over(dance, take));
        }
    }

    private void over(PreparedDance dance, Optional<Recorded> take) {
        run = Optional.empty();
        during.end();
        refresh();
        turnTo(Card.BEFORE);
        take.ifPresent(recorded -> host.work(
                LISTENING,
                progress -> {
                    Optional<ReviewedTake> heard = review(recorded.file(), dance.dance(), recorded.roundTripSeconds());
                    if (heard.isPresent() && dance.before().isPresent()) {
                        keep(dance, heard.get());
                    }
                    return heard;
                },
                this::show));
    }

    private Optional<ReviewedTake> review(Path take, ReviewedDance dance, double roundTripSeconds) throws Refused {
        return ReviewedTake.ofRehearsal(take, dance.calls(), dance.music(), roundTripSeconds, host::tell);
    }

    private static void keep(PreparedDance dance, ReviewedTake take) throws Refused {
        dance.kept()
                .keep(
                        dance.before().orElseThrow(),
                        take.review(),
                        dance.dance().calls().size(),
                        LocalDateTime.now(ZoneId.systemDefault()));
    }

    private void show(Optional<ReviewedTake> take) {
        refresh();
        if (take.isEmpty()) {
            host.tell("Nothing was to be called so far, so there is nothing to show; the take is kept.");
            return;
        }
        reviewed = take;
        after.show(take.get().review());
        turnTo(Card.AFTER);
        after.focus();
    }

    /** What is done before a rehearsal. */
    private final class BeforeDeeds implements BeforePanel.Deeds {
        @Override
        public void rehearse() {
            RehearsePage.this.rehearse();
        }

        @Override
        public void open(Path take) {
            withDance((sheet, wish) -> host.work(
                    LISTENING,
                    progress -> review(
                            take,
                            PreparedDance.dance(wish, host.means(), progress),
                            RoundTripNote.seconds(take).orElse(0)),
                    RehearsePage.this::show));
        }

        @Override
        public void delete(Path take) {
            sheet().ifPresent(sheet -> {
                try {
                    PreparedDance.folder(sheet, host.means()).delete(take);
                    host.tell("Deleted " + TakeNames.told(take) + ".");
                } catch (Refused refused) {
                    host.tell(refused.getMessage());
                }
                refresh();
            });
        }
    }

    /** What is done after one. */
    private final class AfterDeeds implements AfterPanel.Deeds {
        @Override
        public void hear(ReviewedCall call) {
            host.hushOthers(RehearsePage.this);
            fallSilent();
            reviewed.ifPresent(take -> {
                try {
                    replay = Optional.of(new ReplayRun(
                            () -> take.replay().of(call),
                            host.inHand().choices().devices(host.means().devices()),
                            host.means().devices(),
                            host::tell));
                    host.tell("First as planned, then as you said it.");
                } catch (Refused refused) {
                    host.tell(refused.getMessage());
                }
            });
        }

        @Override
        public void again() {
            rehearse();
        }

        @Override
        public void back() {
            fallSilent();
            host.tell("");
            refresh();
            turnTo(Card.BEFORE);
            before.focus();
        }
    }

    /** The microphone listens no more; what was said until then is kept. */
    @Override
    public void leave() {
        isFront = false;
        fallSilent();
    }

    @Override
    public void fallSilent() {
        order(Order.STOP);
        replay.ifPresent(ReplayRun::stop);
        replay = Optional.empty();
    }

    @Override
    public void close() {
        fallSilent();
        run.ifPresent(RehearsalRun::end);
    }

    @Override
    public void look(Palette palette) {
        before.look(palette);
        during.look(palette);
        after.look(palette);
    }
}
