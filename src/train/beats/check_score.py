#!/usr/bin/python3
"""check_score.py: checks score.py by what is published of its measures, and against mir_eval where that is installed.

Published: Davies, Degara and Plumbley 2009, "Evaluation methods for musical audio beat tracking algorithms" (windows, and that
twice or half as many beats have F of two thirds, beats between the true ones 0, and all three a CMLt of 0); Hainsworth and
Macleod 2004, "Particle filtering applied to musical tempo tracking" (continuity asks each beat together with the one before)."""
import unittest

import numpy as np

from score import continuity, f_measure, level, score

LENGTH = .5
TRUE = 10 + LENGTH * np.arange(64)
TWICE = np.arange(TRUE[0], TRUE[-1] + LENGTH, LENGTH / 2)


def labelled(times, first=0):
    place = np.arange(len(times)) + first
    return np.c_[times, place % 4 + 1, place % 8 + 1]


class PublishedExamples(unittest.TestCase):
    def test_beats_at_their_places_are_right(self):
        self.assertEqual((f_measure(TRUE, TRUE), continuity(TRUE[1:], TRUE[1:])), (1, 62 / 63))

    def test_off_by_less_than_the_window_is_right_by_more_is_wrong(self):
        self.assertEqual([f_measure(TRUE, TRUE + off) for off in (.069, -.069, .071, -.071)], [1, 1, 0, 0])
        self.assertEqual([f_measure(TRUE, TRUE + off, .035) for off in (.034, .036)], [1, 0])
        # 17.5 % of half a second
        self.assertGreater(continuity(TRUE, TRUE + .087), .95)
        self.assertEqual(continuity(TRUE, TRUE + .088), 0)

    def test_twice_and_half_as_many_have_two_thirds(self):
        self.assertAlmostEqual(f_measure(TRUE, TWICE), 2 / 3, 2)
        self.assertAlmostEqual(f_measure(TRUE, TRUE[::2]), 2 / 3, 2)
        self.assertEqual((level(TRUE, TWICE), level(TRUE, TRUE[::2])), (2, .5))
        self.assertEqual((continuity(TRUE, TWICE), continuity(TRUE, TRUE[::2])), (0, 0))

    def test_beats_between_the_true_ones_are_all_wrong(self):
        self.assertEqual((f_measure(TRUE, TRUE + LENGTH / 2), continuity(TRUE, TRUE + LENGTH / 2)), (0, 0))

    def test_one_beat_that_strays_breaks_continuity_for_itself_and_the_next(self):
        strayed = TRUE.copy()
        strayed[30] += .2
        self.assertAlmostEqual(f_measure(TRUE, strayed), 63 / 64)
        self.assertAlmostEqual(continuity(TRUE, TRUE) - continuity(TRUE, strayed), 2 / 64)

    def test_each_beat_counts_once(self):
        self.assertAlmostEqual(f_measure(TRUE, np.r_[TRUE, TRUE + .01]), 2 / 3)

    def test_firsts_biases_and_gaps(self):
        heard = labelled(TRUE + .004)
        row = score(labelled(TRUE), np.r_[heard[:20], heard[30:]])
        self.assertAlmostEqual(row['bias'], 4)
        self.assertAlmostEqual(row['gap'], 10 * LENGTH)
        other = score(labelled(TRUE), labelled(TRUE, 4))
        self.assertEqual((other['bar'], other['phrase'], score(labelled(TRUE), labelled(TRUE))['phrase']), (1, 0, 1))

    def test_nothing_heard_is_nothing_right(self):
        row = score(labelled(TRUE), np.zeros((0, 3)))
        self.assertEqual((row['F'], row['CMLt'], row['bar']), (0, 0, 0))


class OtherImplementation(unittest.TestCase):
    def test_f_is_that_of_mir_eval(self):
        try:
            from mir_eval.beat import f_measure as other
        except ImportError:
            self.skipTest('mir_eval is not installed')
        r = np.random.RandomState(5)
        for _ in range(50):
            heard = np.sort(np.delete(TRUE + .04 * r.randn(len(TRUE)), r.randint(len(TRUE), size=6)))
            for within in (.07, .035):
                self.assertAlmostEqual(f_measure(TRUE, heard, within), other(TRUE, heard, within))


if __name__ == '__main__':
    unittest.main()
