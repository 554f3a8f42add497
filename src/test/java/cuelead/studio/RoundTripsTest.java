package cuelead.studio;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import cuelead.report.Refused;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class RoundTripsTest {
    private static final LocalDate DAY = LocalDate.of(2026, 11, 27);

    @TempDir
    private Path folder;

    @Test
    void eachPairOfDevicesHasItsOwn() throws Exception {
        Path file = folder.resolve("round-trips.txt");
        RoundTrips.read(file).keep("Desk microphone", "Hall", 0.0871, DAY);
        RoundTrips.read(file).keep("Headset", "Hall", 0.02, DAY);
        RoundTrips.read(file).keep("Headset", "Hall", 0.03, DAY);
        RoundTrips all = RoundTrips.read(file);
        assertEquals(Optional.of(new RoundTrips.Kept(0.0871, "2026-11-27")), all.of("Desk microphone", "Hall"));
        assertEquals(0.03, all.of("Headset", "Hall").orElseThrow().seconds(), 1e-9);
        assertEquals(Optional.empty(), all.of("Headset", "Ear"));
        assertEquals(3, Files.readAllLines(file).size());
    }

    @Test
    void aBrokenLineIsToldWithItsPlaceAndLeftAsItIs() throws Exception {
        Path file = Files.writeString(folder.resolve("round-trips.txt"), "# mine\nabout 80\n");
        String told = assertThrows(Refused.class, () -> RoundTrips.read(file)).getMessage();
        assertTrue(told.startsWith(file + ":2:1: this line is no round trip"), told);
        assertEquals("# mine\nabout 80\n", Files.readString(file));
    }
}
