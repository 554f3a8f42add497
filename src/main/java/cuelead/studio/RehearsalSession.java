package cuelead.cli;

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

/**
 * Opens the devices of a rehearsal, finds the round trip, and records.
 *
 * @param kept        where takes and round trips are kept
 * @param calibratedSeconds the round trip, where it is known from a recording of clicks
 * @param measures    whether the round trip of the last time is not to be taken
 */
record RehearsalSession(
        Surroundings surroundings,
        RehearsalDevices devices,
        RehearsalFolder kept,
        OptionalDouble calibratedSeconds,
        boolean measures) {
    private static final List<String> WHAT_TO_DO = List.of(
            "Begin softly: long loud sound harms hearing, in headphones most of all.",
            "What you say is recorded and stays on this computer; delete it in %s whenever you like.");

    /** A take, and how late it is. */
    record Recorded(Path file, double seconds, double roundTripSeconds) {}

    /** Records one; empty when its user quits before. */
    Optional<Recorded> record(RehearsalSound sound, List<PlannedCall> plan, PromptLine prompts)
            throws Refused, InterruptedException {
        try (Microphone microphone = devices.openMicrophone(surroundings.devices(), sound.rate());
                SpeakerPair speakers = devices.openSpeakers(surroundings.devices(), sound.rate());
                RehearsalView view = RehearsalView.of(surroundings)) {
            WHAT_TO_DO.forEach(line -> view.tell(String.format(line, kept.dances())));
            Staged stream = new Staged();
            speakers.main().play(stream, 0);
            MicrophoneLine line = new MicrophoneLine(microphone, speakers.main(), System::nanoTime);
            RehearsalWait.forDevices(view, speakers.main(), line);
            Optional<RoundTrip> roundTrip = roundTrip(new RoundTripDesk(view, speakers.main(), line, stream));
            if (roundTrip.isEmpty() || isQuitBeforeBegin(view, speakers, line)) {
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
            TakeAtExit atExit = new TakeAtExit(growing, file, surroundings.err());
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

    private static boolean isQuitBeforeBegin(RehearsalView view, SpeakerPair speakers, MicrophoneLine line)
            throws Refused, InterruptedException {
        if (view.hasKeys()) {
            view.tell("Put your headphones on. Enter begins; then q ends.");
        }
        String key = RehearsalWait.forKey(view, speakers.main(), line, List.of("enter", RawKeys.QUIT));
        return key.equals(RawKeys.QUIT);
    }

    private Optional<RoundTrip> roundTrip(RoundTripDesk desk) throws Refused, InterruptedException {
        if (calibratedSeconds.isPresent()) {
            return Optional.of(RoundTrip.of(calibratedSeconds.getAsDouble()));
        }
        RoundTrips all = RoundTrips.read(kept.roundTrips());
        String microphone = devices.microphoneTold(surroundings.devices());
        String device = devices.deviceTold(surroundings.devices());
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
