"""As a song leaves a mastering studio: as loud as songs are sold, and its peaks held."""
import numpy as np
from scipy.ndimage import minimum_filter1d, uniform_filter1d
from scipy.signal import bilinear, lfilter, resample_poly

from feature import RATE

LOUDNESS_LUFS, PEAK_DBTP = -14., -1.
OVER = 4  # peaks between the samples
FRAME = RATE // 1000
AHEAD_FRAMES, RELEASE_SECONDS = 3, .1
PASSES = 3  # what the limiter takes away is made up for
BLOCK_SECONDS, STEP_SECONDS = .4, .1
SILENCE_LUFS, QUIET_LU = -70., 10.


def warped(hz):
    """Where the bilinear transform takes a frequency from, as radians a second."""
    return 2 * RATE * np.tan(np.pi * hz / RATE)


def k_weighted(x):
    """ITU-R BS.1770-4, annex 1: a shelf of 4 dB about 1.7 kHz and a high-pass at 38 Hz, at any rate."""
    w, q, high = warped(1681.974), .7071752, 10 ** (4 / 20)
    shelf = [high, np.sqrt(high) * w / q, w ** 2], [1, w / q, w ** 2]
    w, q = warped(38.13547), .5003270
    high_pass = [1, 0, 0], [1, w / q, w ** 2]
    for above, below in (shelf, high_pass):
        x = lfilter(*bilinear(above, below, RATE), x)
    return x


def loudness_lufs(x):
    """Integrated, of one channel that sounds from two speakers: blocks of 400 ms, gated twice (the same, and EBU R 128)."""
    step, steps = int(STEP_SECONDS * RATE), round(BLOCK_SECONDS / STEP_SECONDS)
    squares = np.add.reduceat(2 * k_weighted(x) ** 2, np.arange(0, len(x), step))[:len(x) // step] / step
    blocks = np.convolve(squares, np.full(steps, 1 / steps), 'valid') + 1e-12
    lufs = lambda power: -.691 + 10 * np.log10(power)
    blocks = blocks[lufs(blocks) > SILENCE_LUFS]
    if not len(blocks):
        return -np.inf
    return float(lufs(blocks[lufs(blocks) > lufs(blocks.mean()) - QUIET_LU].mean()))


def frame_peaks(x):
    """The highest between the samples of each frame."""
    dense = np.abs(resample_poly(x, OVER, 1))
    return np.maximum.reduceat(dense, np.arange(0, len(dense), OVER * FRAME))


def limited(x, peaks):
    """Gain falls ahead of a peak and comes back after it."""
    gain = np.minimum(1, 10 ** (PEAK_DBTP / 20) / np.maximum(peaks, 1e-9))
    gain = minimum_filter1d(gain, 2 * AHEAD_FRAMES + 1)
    back = 1 - np.exp(-FRAME / (RELEASE_SECONDS * RATE))
    for i in range(1, len(gain)):
        gain[i] = min(gain[i], gain[i - 1] + (1 - gain[i - 1]) * back)
    gain = uniform_filter1d(gain, AHEAD_FRAMES)
    centres = np.arange(len(gain)) * FRAME + FRAME / 2
    return x * np.interp(np.arange(len(x)), centres, gain)


def mastered(x):
    """A song of any level -> one of LOUDNESS_LUFS, or as near as the limiter lets it come; silence stays silent."""
    loudness = loudness_lufs(x)
    if loudness == -np.inf:
        return x
    gain_db, peaks = LOUDNESS_LUFS - loudness, frame_peaks(x)
    for _ in range(PASSES):
        gain = 10 ** (gain_db / 20)
        y = limited(x * gain, peaks * gain)
        gain_db += LOUDNESS_LUFS - loudness_lufs(y)
    return y
