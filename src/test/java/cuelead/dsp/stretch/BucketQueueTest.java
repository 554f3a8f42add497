package cuelead.dsp.stretch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;

class BucketQueueTest {
    @Property
    void givesAllTheHighestFirst(
            @ForAll @Size(min = 1, max = 200) List<@IntRange(min = 1, max = 1_000_000_000) Integer> energies) {
        BucketQueue queue = new BucketQueue(energies.size());
        queue.begin(1e9f);
        for (int i = 0; i < energies.size(); i++) {
            queue.put(i, energies.get(i));
        }
        Set<Integer> taken = new HashSet<>();
        double lowest = Double.MAX_VALUE;
        for (int i = queue.take(); i >= 0; i = queue.take()) {
            assertTrue(taken.add(i));
            assertTrue(energies.get(i) <= lowest * 1.26, "a step is a quarter of an octave, 1.19 to 1.25");
            lowest = Math.min(lowest, energies.get(i));
        }
        assertEquals(energies.size(), taken.size());
    }
}
