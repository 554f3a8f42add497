package cuelead.studio;

import cuelead.output.GrowingTake;
import cuelead.output.RoundTripNote;
import cuelead.rehearse.PlannedCall;
import cuelead.report.Refused;
import cuelead.sound.Microphone;
import cuelead.sound.Staged;
import cuelead.steer.SpeakerPair;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * Opens the devices of a rehearsal, finds the round trip, and records.
 *
 * @param kept              where takes and round trips are kept
 * @param calibratedSeconds the round trip, where it is known from a recording of clicks
 * @param measures          whether the round trip of the last time is not to be taken
 * @param lastWords         is told where the take is when the program is ended from outside
 */
public record RehearsalSession(
        RehearsalDevices devices,
        RehearsalFolder kept,
        OptionalDouble calibratedSeconds,
        boolean measures,
        Consumer<String> lastWords) {
    private static final List<String> WHAT_TO_DO = List.of(
            "Begin softly: long loud sound harms hearing, in headphones most of all.",
            "What you say is recorded and stays on this computer; delete it in %s whenever you like.");

    /** Opens where a rehearsal is followed; it is closed when that is over. */
    @FunctionalInterface
    public interface ViewOpening {
        RehearsalView open() throws Refused;
    }

    /**
     * A take that was recorded.
     *
     * @param seconds          how long it is
     * @param roundTripSeconds how much later it is than the song
     */
    public record Recorded(Path file, double seconds, double roundTripSeconds) {}

    /**
     * Records one.
     *
     * @param plan in order of time, at least one call
     * @return empty when its user stops before the music has begun
     * @throws Refused when a device or the folder cannot be used
     */
    public Optional<Recorded> record(
            RehearsalSound sound, List<PlannedCall> plan, PromptTimes prompts, ViewOpening opening)
            throws Refused, InterruptedException {
        try (Microphone microphone = devices.openMicrophone(sound.rate());
                SpeakerPair speakers = devices.openSpeakers(sound.rate());
                RehearsalView view = opening.open()) {
            WHAT_TO_DO.forEach(line -> view.tell(String.format(line, kept.dances())));
            Staged stream = new Staged();
            speakers.main().play(stream, 0);
            MicrophoneLine line = new MicrophoneLine(microphone, speakers.main(), System::nanoTime);
            RehearsalWait wait = new RehearsalWait(view, speakers.main(), line);
            wait.forDevices();
            Optional<RoundTrip> roundTrip = roundTrip(new RoundTripDesk(wait, stream));
            if (roundTrip.isEmpty() || wait.answer(RehearsalView.Question.BEGIN) == RehearsalView.Order.STOP) {
                return Optional.empty();
            }
            Rehearsal rehearsal = new Rehearsal(speakers, line, view, plan, prompts);
            double begunFrames = line.offsetFrames();
            Staged.Stage music = stream.begin(sound.mix());
            rehearsal.awaitBegin(music);
            kept.make();
            Path file = kept.nextTake(LocalDate.now(ZoneId.systemDefault()));
            double late = roundTrip.get().of(begunFrames, begunFrames, line.rate());
            GrowingTake growing = GrowingTake.begin(file, line.rate(), late);
            SongTake take = new SongTake(growing, line, roundTrip.get(), music.firstFrame(), begunFrames);
            TakeAtExit atExit = new TakeAtExit(growing, file, lastWords);
            try (take) {
                rehearsal.run(music, take, devices.delaySeconds());
            } catch (Refused lastWords) {
                view.tell(lastWords.getMessage());
            } catch (RuntimeException | Error | InterruptedException brokenOff) {
                view.tell(TakeAtExit.kept(file));
                throw brokenOff;
            } finally {
                atExit.forget();
            }
            // as it stands in the file, so that a later review of it says the same
            double noted = RoundTripNote.seconds(file).orElse(take.roundTripSeconds());
            return Optional.of(new Recorded(file, take.seconds(), noted));
        }
    }

    private Optional<RoundTrip> roundTrip(RoundTripDesk desk) throws Refused, InterruptedException {
        if (calibratedSeconds.isPresent()) {
            return Optional.of(RoundTrip.of(calibratedSeconds.getAsDouble()));
        }
        RoundTrips all = RoundTrips.read(kept.roundTrips());
        String microphone = devices.microphoneTold();
        String device = devices.headphonesTold();
        Optional<RoundTrip> last = measures ? Optional.empty() : desk.last(all, microphone, device);
        if (last.isPresent()) {
            return last;
        }
        Optional<RoundTrip> measured = desk.measure();
        if (measured.isPresent()) {
            kept.make();
            RoundTripDesk.keep(measured.get(), all, microphone, device);
        }
        return measured;
    }
}
