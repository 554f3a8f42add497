"""What the network sees of a sound: 50 frames a second, 12 bands to the octave. The program computes the same in Java
(BandSpectrum, FilterBank): mono at 22,050 Hz, frame i centred on sample 441 i, 1024 samples, periodic Hann."""
import numpy as np

RATE, HOP, WINDOW = 22050, 441, 1024
FRAMES_PER_SECOND = RATE // HOP
LOWEST_HZ, HIGHEST_HZ, BANDS_PER_OCTAVE = 30, 10500, 12
FLOOR = 1e-5
GAIN = 10.  # x = ln(1 + GAIN * magnitude / mean magnitude of the song)


def filter_bank():
    """Triangles over FFT bins, each of sum 1 -> [bin][band]."""
    many = BANDS_PER_OCTAVE * np.log2(HIGHEST_HZ / LOWEST_HZ) + 1
    centres_hz = LOWEST_HZ * 2 ** (np.arange(0, many) / BANDS_PER_OCTAVE)
    bins = np.unique(np.round(centres_hz * WINDOW / RATE).astype(int))
    bank = np.zeros((WINDOW // 2 + 1, len(bins) - 2), np.float32)
    for i in range(len(bins) - 2):
        low, centre, high = bins[i:i + 3]
        for k in range(low + 1, high):
            bank[k, i] = (k - low) / (centre - low) if k <= centre else (high - k) / (high - centre)
        bank[:, i] /= bank[:, i].sum()
    return bank


BANK = filter_bank()
BANDS = BANK.shape[1]


def magnitudes(samples):
    """-> [frame][band], FLOOR added."""
    frames = len(samples) // HOP + 1
    x = np.pad(np.asarray(samples, np.float32), (WINDOW // 2, WINDOW + HOP))
    hann = np.hanning(WINDOW + 1)[:WINDOW].astype(np.float32)
    out = np.empty((frames, BANDS), np.float32)
    for a in range(0, frames, 2000):
        at = np.arange(a, min(frames, a + 2000))[:, None] * HOP + np.arange(WINDOW)[None]
        out[a:a + len(at)] = np.abs(np.fft.rfft(x[at] * hann)).astype(np.float32) @ BANK
    return out + FLOOR


def compressed(m):
    """As loudness is felt, whatever the song's level."""
    return np.log1p(GAIN * m / m.mean()).astype(np.float32)
