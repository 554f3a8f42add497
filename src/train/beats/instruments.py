"""Instruments of our own: notes -> samples. Each is a function (r, notes, length) -> array."""
import numpy as np
from scipy.signal import butter, lfilter

from feature import RATE


def hz(pitch):
    return 440 * 2 ** ((pitch - 69) / 12)


def saw(f, n, phase):
    return 2 * ((f * np.arange(n) / RATE + phase) % 1) - 1


def lowpass(y, cut, order=1):
    return lfilter(*butter(order, min(.95, cut / (RATE / 2))), y)


def placed(notes, length, tail=0.):
    """(note, first sample, samples) of those that lie inside."""
    for note in notes:
        a = int(note.start * RATE)
        n = min(int((note.end - note.start + tail) * RATE), length - a)
        if n > 80:
            yield note, a, n


def envelope(n, attack, release):
    t = np.arange(n) / RATE
    return np.minimum(1, t / attack) * np.minimum(1, np.maximum(0, n / RATE - t) / release)


def plucked(r, notes, length):
    """A string, plucked (Karplus and Strong 1983), its loop as one filter."""
    y = np.zeros(length)
    bright, ring = r.uniform(.3, .7), r.uniform(.985, .997)
    for note, a, n in placed(notes, length, .25):
        period = max(2, int(round(RATE / hz(note.pitch) - .5)))
        x = np.zeros(n)
        burst = min(n, period)
        x[:burst] = lfilter([1 - bright], [1, -bright], r.uniform(-1, 1, burst))
        loop = np.zeros(period + 2)
        loop[0], loop[period], loop[period + 1] = 1, -ring * .5, -ring * .5
        y[a:a + n] += lfilter([1], loop, x) * note.velocity * envelope(n, .001, .05)
    return y


def reeds(r, notes, length):
    """An accordion: two reeds out of tune, a bellows."""
    y = np.zeros(length)
    apart, wide = r.uniform(1.002, 1.009), r.uniform(.2, .5)
    for note, a, n in placed(notes, length):
        f = hz(note.pitch)
        wave = sum(np.sign(saw(f * k, n, r.rand()) + wide) for k in (1, apart, 1 / apart))
        y[a:a + n] += wave * envelope(n, r.uniform(.01, .05), .04) * note.velocity * .3
    return lowpass(y, r.uniform(2000, 5000))


def strings(r, notes, length):
    """Bowed: many saws, slow begin."""
    y = np.zeros(length)
    attack = r.uniform(.03, .25)
    for note, a, n in placed(notes, length, .1):
        f = hz(note.pitch)
        wave = sum(saw(f * d, n, r.rand()) for d in (1, r.uniform(1.001, 1.006), r.uniform(.994, .999)))
        y[a:a + n] += wave * envelope(n, attack, .12) * note.velocity * .3
    return lowpass(y, r.uniform(1500, 4500), 2)


def keys(r, notes, length):
    """Struck: falling partials, a knock."""
    y = np.zeros(length)
    decay, many, knock = r.uniform(.2, 1.2), r.randint(2, 8), r.uniform(0, .4)
    for note, a, n in placed(notes, length, .1):
        t, f = np.arange(n) / RATE, hz(note.pitch)
        wave = sum(np.sin(2 * np.pi * f * k * t) * np.exp(-t * k ** .6 / decay) / k ** 1.2 for k in range(1, many + 1) if f * k < 10000)
        wave[:60] += knock * r.randn(60)
        y[a:a + n] += wave * note.velocity * envelope(n, .002, .04)
    return y


def organ(r, notes, length):
    """Drawbars."""
    y = np.zeros(length)
    bars = [(k, r.rand()) for k in (.5, 1, 1.5, 2, 3, 4, 6)]
    for note, a, n in placed(notes, length):
        t, f = np.arange(n) / RATE, hz(note.pitch)
        y[a:a + n] += sum(v * np.sin(2 * np.pi * f * k * t) for k, v in bars if f * k < 10000) * envelope(n, .006, .02) * note.velocity * .3
    return y


def bass(r, notes, length):
    """A bass guitar or a synthetic bass."""
    y = np.zeros(length)
    decay, square = r.uniform(.15, 1.2), r.rand() < .4
    for note, a, n in placed(notes, length):
        t = np.arange(n) / RATE
        wave = saw(hz(note.pitch), n, r.rand())
        y[a:a + n] += (np.sign(wave) if square else wave) * np.exp(-t / decay) * envelope(n, .004, .02) * note.velocity
    return lowpass(y, r.uniform(200, 1200), 2)


def frequency_modulated(r, notes, length):
    """Chowning 1973. Held out: the sound source that training never hears."""
    y = np.zeros(length)
    ratio, depth, decay = r.choice([1, 1.41, 2, 3, 3.5]), r.uniform(.5, 5), r.uniform(.15, .9)
    for note, a, n in placed(notes, length, .05):
        t, f = np.arange(n) / RATE, hz(note.pitch)
        fall = np.exp(-t / decay)
        y[a:a + n] += np.sin(2 * np.pi * f * t + depth * fall * np.sin(2 * np.pi * f * ratio * t)) * fall * envelope(n, .003, .03) * note.velocity
    return y


def distorted(r, notes, length):
    """Power chords through an overdriven amplifier and a loudspeaker."""
    from music import MUTED
    y = np.zeros(length)
    tune, mute, fifth, drive = r.uniform(.997, 1.003), r.uniform(.04, .12), r.rand() < .85, r.uniform(2, 25)
    for note, a, n in placed(notes, length):
        f, t = hz(note.pitch) * tune, np.arange(n) / RATE
        x = saw(f, n, r.rand()) + (saw(f * 1.498, n, r.rand()) if fifth else 0) + .6 * saw(f * 2, n, r.rand())
        x[:60] += .5 * r.randn(60)
        y[a:a + n] += x * np.exp(-t / (mute if note.part == MUTED else 1.8)) * envelope(n, .001, .004) * note.velocity
    y = lfilter(*butter(1, r.uniform(60, 250) / (RATE / 2), 'high'), y)
    y = np.tanh(y * drive) if r.rand() < .8 else np.clip(y * drive, -1, 1)
    return lowpass(y, r.uniform(2500, 6000), 2)


VOWELS = ((700, 1150, 2500), (400, 2000, 2600), (300, 2300, 3000), (450, 800, 2600), (330, 900, 2300), (600, 1700, 2500))


def singer(r, notes, length):
    """A pulse through formants (Peterson and Barney 1952), scooping, with vibrato, consonants and loose time."""
    y = np.zeros(length)
    shift, growl, vibrato = r.choice([-12, -5, 0, 7]), r.rand() < .15, r.uniform(0, .5)
    loose, size = r.uniform(.008, .045), r.uniform(.85, 1.25)
    moved = [(n, max(0, n.start + r.randn() * loose)) for n in notes]
    for note, start in moved:
        a = int(start * RATE)
        n = min(int((note.end - note.start) * RATE), length - a)
        if n < 400:
            continue
        t = np.arange(n) / RATE
        f = hz(note.pitch + shift + vibrato * np.sin(2 * np.pi * 5.5 * t) * np.minimum(1, t * 3) - 2 * r.rand() * np.exp(-t / .05))
        phase = np.cumsum(f) / RATE
        x = r.randn(n) * (1 + np.sin(np.pi * phase)) if growl else 2 * (phase % 1) - 1 + .05 * r.randn(n)
        z = np.zeros(n)
        for formant in VOWELS[r.randint(6)]:
            q = .985
            z += lfilter([1 - q], [1, -2 * q * np.cos(2 * np.pi * formant * size / RATE), q * q], x)
        if r.rand() < .5:  # a hissing consonant
            k = min(n, int(r.uniform(.02, .09) * RATE))
            z[:k] = z[:k] * .2 + lfilter([1, -.9], 1, r.randn(k)) * .25 * z.std()
        y[a:a + n] += z * envelope(n, r.uniform(.01, .08), .05) * note.velocity
    return y


PITCHED = (plucked, reeds, strings, keys, organ)
