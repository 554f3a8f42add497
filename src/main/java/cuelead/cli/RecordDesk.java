package cuelead.cli;

import cuelead.report.Refused;
import cuelead.sound.Speakers;
import cuelead.steer.WordDesk;
import cuelead.steer.WordDevices;
import cuelead.steer.WordKeeping;
import cuelead.steer.WordRow;
import cuelead.time.SampleRate;
import cuelead.voice.Mark;
import cuelead.voice.RecordingSession;
import cuelead.voice.TakeBuffer;
import cuelead.voice.TakeVerdict;
import cuelead.voice.TakeVerdict.Use;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Records words one after the other: by keys its user decides, hands-free it goes on by itself. Used on one thread. */
final class RecordDesk implements KeyedLine.Shown {
    private final RecordingSession session;
    private final TakeBuffer buffer;
    private final WordDesk desk;
    private final Optional<WordRow> row;
    private final List<String> news = new ArrayList<>();
    private String announced = "";
    private boolean isEnded;

    /** Who decides what comes next. */
    enum Steering {
        BY_KEYS,
        HANDS_FREE
    }

    /** Devices that are open. */
    private record OpenDevices(Speakers speakers, TakeBuffer microphone) implements WordDevices {
        @Override
        public SampleRate rate() {
            return microphone.rate();
        }

        @Override
        public Optional<TakeBuffer> listening() {
            return Optional.of(microphone);
        }

        @Override
        public void hush() {
            speakers.stop();
        }
    }

    RecordDesk(RecordingSession session, TakeBuffer buffer, Speakers speakers, WordKeeping keeping, Steering steering)
            throws Refused {
        this.session = session;
        this.buffer = buffer;
        desk = new WordDesk(session, new OpenDevices(speakers, buffer), keeping);
        row = steering == Steering.HANDS_FREE ? Optional.of(new WordRow(desk)) : Optional.empty();
    }

    @Override
    public boolean isOver() {
        return isEnded || session.isOver();
    }

    @Override
    public void obey(String stroke) throws Refused {
        Optional<RecordKeys> key = RecordKeys.of(stroke);
        if (key.isPresent() && !isOver()) {
            try {
                obey(key.get());
            } catch (InterruptedException broken) {
                Thread.currentThread().interrupt();
                isEnded = true;
            }
        }
    }

    private void obey(RecordKeys key) throws Refused, InterruptedException {
        if (key.laterSeconds() != 0) {
            desk.nudge(key.laterSeconds());
            return;
        }
        switch (key) {
            case TAKE -> desk.record();
            case ACCEPT -> acceptOrTake();
            case PLAY -> desk.play();
            case HELP -> news.addAll(RecordKeys.TOLD);
            case BACK -> {
                session.back();
                desk.ready();
            }
            case SKIP -> {
                session.skip();
                desk.ready();
            }
            default -> isEnded = true;
        }
    }

    private void acceptOrTake() throws Refused, InterruptedException {
        if (desk.canKeep()) {
            desk.keep();
        } else if (desk.phase() == WordDesk.Phase.RECORDED) {
            session.skip();
            desk.ready();
        } else {
            desk.record();
        }
    }

    @Override
    public void tick() throws Refused {
        if (isOver()) {
            return;
        }
        String word = session.word();
        try {
            Optional<TakeVerdict> verdict = row.isPresent() ? row.get().tick() : desk.tick();
            verdict.filter(one -> row.isPresent() || one.fault().use() != Use.GOOD)
                    .ifPresent(one -> news.add(word + ": " + one.fault().sentence()));
        } catch (InterruptedException broken) {
            Thread.currentThread().interrupt();
            isEnded = true;
        }
        if (row.isPresent() && !isOver()) {
            announce();
        }
    }

    /** Once for each time that it is to be said. */
    private void announce() {
        boolean isCountedIn = desk.phase() == WordDesk.Phase.COUNT_IN;
        if (isCountedIn && announced.isEmpty()) {
            announced = "Say \"" + session.word() + "\" after the fourth click (" + session.number() + " of "
                    + session.count() + ").";
            news.add(announced);
        } else if (!isCountedIn) {
            announced = "";
        }
    }

    @Override
    public List<String> news() {
        List<String> told = List.copyOf(news);
        news.clear();
        return told;
    }

    /** {@code 3 of 30  "rock"  after the fourth click ...}. */
    @Override
    public String line() {
        if (isOver()) {
            return "";
        }
        return session.number() + " of " + session.count() + "  \"" + session.word() + "\"  " + state();
    }

    private String state() {
        if (!buffer.hasHeard()) {
            return "waiting for the microphone ...";
        }
        return switch (desk.phase()) {
            case READY, WAITING -> "space records it";
            case COUNT_IN -> "listen: four clicks, then say it";
            case TAKING -> "NOW";
            case JUDGED ->
                desk.mark()
                        .map(mark -> judged() + told(mark) + ": Enter keeps  space again  p plays")
                        .orElse("space again  n leaves out");
            case RECORDED -> "recorded, " + told(desk.mark().orElseThrow()) + ": p plays  Enter on  space again";
        };
    }

    private String judged() {
        return session.taken().orElseThrow().verdict().fault().use() == Use.GOOD ? "good, " : "";
    }

    private static String told(Mark mark) {
        return String.format(Locale.ROOT, "%.3f s", mark.centreSeconds());
    }
}
