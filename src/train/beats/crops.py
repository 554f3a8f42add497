"""Pieces of the made songs to train on, changed on the way: faster or slower, higher or lower, tilted, with bands missing."""
import glob
import math
from dataclasses import dataclass

import numpy as np

from feature import FRAMES_PER_SECOND, GAIN

CROP_FRAMES = 1200


@dataclass(frozen=True)
class Clip:
    """feature: log magnitudes [frame][band]; mean: mean magnitude; events: times of each output's events, seconds."""

    feature: np.ndarray
    mean: float
    events: tuple
    bpm: float
    style: str


def load(folder, split):
    clips = []
    for name in sorted(glob.glob(f'{folder}/{split}-*.npz')):
        with np.load(name) as z:
            mean = float(np.exp(z['feature'].astype(np.float32)).mean())
            clips.append(Clip(z['feature'], mean, (z['beats'], z['firsts'], z['phrases']), float(z['bpm']), str(z['style'])))
    return clips


def chances(clips):
    """How likely each clip is drawn: songs near the ends of the tempi, where levels are mistaken, twice as often."""
    weights = np.array([2. if clip.bpm > 148 or clip.bpm < 84 else 1. for clip in clips])
    return weights / weights.sum()


def _at_speed(x, speed):
    """Frames resampled: the music goes by this much faster."""
    at = np.arange(CROP_FRAMES) * speed
    at = at[at < len(x) - 1]
    i = at.astype(int)
    part = (at - i)[:, None].astype(np.float32)
    return x[i] * (1 - part) + x[i + 1] * part


def _shifted(x, bands):
    """Semitones up or down; the edge bands are repeated."""
    return x[:, np.clip(np.arange(x.shape[1]) - bands, 0, x.shape[1] - 1)]


def _speed(r, clip):
    """Slow songs may be made faster and fast ones slower, so that felt tempi stay within 55 and 212."""
    if r.rand() > .65:
        return 1.
    speed = math.exp(r.uniform(-.3, .3))
    return speed if 55 < clip.bpm * speed < 212 else 1.


def crop(r, clip, vary):
    """-> (x [frame][band], y [output][frame], mask [frame])"""
    speed = _speed(r, clip) if vary else 1.
    need = int(CROP_FRAMES * speed) + 2
    spare = len(clip.feature) - need
    first = r.randint(0, spare + 1) if vary and spare > 0 else 0
    x = clip.feature[first:first + need].astype(np.float32)
    x = _at_speed(x, speed)[:CROP_FRAMES] if speed != 1. else x[:CROP_FRAMES]
    gain = GAIN / clip.mean
    if vary:
        if r.rand() < .5:
            x = _shifted(x, r.randint(-4, 5))
        if r.rand() < .6:
            tilt = np.interp(np.arange(x.shape[1]), np.linspace(0, x.shape[1] - 1, 6), r.randn(6) * r.uniform(.1, 1.2))
            x = x + tilt.astype(np.float32)
        if r.rand() < .25:  # steady noise in every band
            floor = np.log(clip.mean) + r.uniform(-5, -.5) + r.randn(x.shape[1]) * .5
            x = np.logaddexp(x, (floor + .3 * r.randn(*x.shape)).astype(np.float32))
        gain *= math.exp(r.uniform(-1, 1))
    x = np.log1p(np.exp(x) * gain)
    if vary and r.rand() < .3:
        low = r.randint(0, 66)
        x[:, low:low + r.randint(3, 16)] *= r.uniform(0, .5)
    if vary and r.rand() < .15:  # a moment lost
        at = r.randint(0, CROP_FRAMES)
        x[at:at + r.randint(10, 120)] *= r.uniform(0, .4)
    return _filled(x, clip, first, speed)


def _filled(x, clip, first, speed):
    frames = len(x)
    whole = np.zeros((CROP_FRAMES, x.shape[1]), np.float32)
    whole[:frames] = x
    target = np.zeros((len(clip.events), CROP_FRAMES), np.float32)
    mask = np.zeros(CROP_FRAMES, np.float32)
    mask[:frames] = 1
    for output, times in enumerate(clip.events):
        at = np.round((times * FRAMES_PER_SECOND - first) / speed).astype(int)
        for offset, value in ((-1, .5), (1, .5), (0, 1.)):  # neighbours count half
            j = at + offset
            j = j[(j >= 0) & (j < frames)]
            target[output, j] = np.maximum(target[output, j], value)
    return whole, target, mask
