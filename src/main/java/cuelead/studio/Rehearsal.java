package cuelead.studio;

import cuelead.rehearse.PlannedCall;
import cuelead.rehearse.Prompt;
import cuelead.report.Refused;
import cuelead.sound.Staged;
import cuelead.steer.DropOuts;
import cuelead.steer.LostDevices;
import cuelead.steer.SpeakerPair;
import cuelead.time.SampleRate;
import java.util.List;
import java.util.Optional;

/** Music plays, prompts are shown as it is heard, and what the microphone hears becomes a take. Used once, on one thread. */
final class Rehearsal {
    private static final long POLL_MILLIS = 10;
    /** The last call is waited for so long. */
    private static final double AFTER_SECONDS = 2.5;

    private final SpeakerPair speakers;
    private final MicrophoneLine line;
    private final RehearsalView view;
    private final List<PlannedCall> plan;
    private final PromptTimes prompts;
    private final LostDevices lost;
    private final MicrophoneNews microphoneNews;
    private final int dropOutsBefore;
    private int dropOuts;

    Rehearsal(
            SpeakerPair speakers,
            MicrophoneLine line,
            RehearsalView view,
            List<PlannedCall> plan,
            PromptTimes prompts) {
        this.speakers = speakers;
        this.line = line;
        this.view = view;
        this.plan = plan;
        this.prompts = prompts;
        lost = new LostDevices(speakers);
        microphoneNews = new MicrophoneNews(plan.get(0).seconds());
        dropOutsBefore = speakers.dropOuts();
        dropOuts = dropOutsBefore;
    }

    /** Waits until the stream has come to the music. */
    void awaitBegin(Staged.Stage music) throws Refused, InterruptedException {
        RehearsalWait wait = new RehearsalWait(view, speakers.main(), line);
        while (!music.hasBegun()) {
            wait.once();
        }
    }

    /**
     * To the end of the calls, or until its user ends it. A microphone that goes, and a disk that is full, end it with a
     * sentence.
     *
     * @param delaySeconds how much later than this computer knows the music is heard
     */
    void run(Staged.Stage music, SongTake take, double delaySeconds) throws InterruptedException {
        SampleRate rate = line.rate();
        double endSeconds = plan.get(plan.size() - 1).seconds() + AFTER_SECONDS;
        boolean isOver = false;
        while (!isOver) {
            Optional<RehearsalView.Order> order = view.order(speakers.main(), POLL_MILLIS);
            double songSeconds = rate.secondsAt(speakers.main().heardFrame() - music.firstFrame()) - delaySeconds;
            try {
                watchSpeakers(take);
                float[] heard = line.listen();
                take.add(heard);
                view.level(RehearsalWait.peak(heard));
                microphoneNews.of(heard, take.peak(), songSeconds).ifPresent(view::tell);
            } catch (Refused broken) {
                view.tell(broken.getMessage());
                isOver = true;
            }
            tellPrompts(songSeconds);
            isOver |= order.equals(Optional.of(RehearsalView.Order.STOP)) || songSeconds > endSeconds;
        }
        speakers.stop();
        lost.account().forEach(view::tell);
        DropOuts.told(dropOuts - dropOutsBefore).ifPresent(view::tell);
    }

    private void tellPrompts(double songSeconds) {
        for (Optional<Prompt> due = prompts.due(songSeconds); due.isPresent(); due = prompts.due(songSeconds)) {
            view.prompt(due.get(), songSeconds);
        }
        view.show(prompts.at(songSeconds));
    }

    private void watchSpeakers(SongTake take) {
        lost.news().forEach(view::tell);
        int now = speakers.dropOuts();
        if (now != dropOuts || speakers.main().isDeviceLost()) {
            take.broken();
        }
        dropOuts = now;
    }
}
