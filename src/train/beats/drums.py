"""Drum kits of our own, made from sines and noise; every kit differs."""
import numpy as np
from scipy.signal import butter, lfilter

from feature import RATE
from music import *


def seconds(length):
    return np.arange(int(length * RATE)) / RATE


def band_noise(r, length, low, high=None):
    edges = low / (RATE / 2) if high is None else [low / (RATE / 2), high / (RATE / 2)]
    return lfilter(*butter(2, edges, 'high' if high is None else 'band'), r.randn(int(length * RATE)))


def drum(r, hz, bend, decay, length=.5):
    """A skin: its tone falls by the bend."""
    t = seconds(length)
    return np.sin(2 * np.pi * (hz * t + hz * bend * .025 * (1 - np.exp(-t / .025)))) * np.exp(-t / decay)


def cymbal(r, decay, low):
    """Noise, with some metal partials."""
    t = seconds(min(2.2, 5 * decay))
    y = band_noise(r, (len(t) + 1) / RATE, low)[:len(t)]
    for _ in range(r.randint(0, 7)):
        y = y + .3 * np.sin(2 * np.pi * r.uniform(low * .6, 9500) * t + r.uniform(0, 6))
    return y * np.exp(-t / decay) * .6


def struck_bar(r, hz, decay):
    """Modal sound: free bar partials (1, 2.76, 5.40)."""
    t = seconds(5 * decay)
    return sum(np.sin(2 * np.pi * hz * k * t) * np.exp(-t * k / decay) / k for k in (1, 2.76, 5.4) if hz * k < 10000)


def kit(r):
    """A kit: drum -> samples."""
    t = seconds(.5)
    kick = drum(r, r.uniform(40, 66), r.uniform(2, 6), r.uniform(.07, .3))
    click = r.uniform(0, .8)
    kick[:200] += click * r.randn(200) * np.exp(-np.arange(200) / 50.)
    body, rattle, tone = r.uniform(150, 260), r.uniform(.04, .22), r.uniform(.2, .9)
    snare = band_noise(r, .5, r.uniform(300, 1800)) * np.exp(-t / rattle) + tone * drum(r, body, .3, .07)[:len(t)]
    hat = cymbal(r, r.uniform(.012, .06), r.uniform(4000, 7500))
    ride = cymbal(r, r.uniform(.1, .5), r.uniform(4000, 7000)) * .7
    clap = sum(np.roll(band_noise(r, .25, 800, 3000) * np.exp(-seconds(.25) / .04), int(d * RATE)) for d in (0, .011, .022))
    made = {KICK: kick, SNARE: snare, HAT: hat, PEDAL_HAT: hat * .7, OPEN_HAT: cymbal(r, r.uniform(.12, .4), r.uniform(4000, 7000)),
            CRASH: cymbal(r, r.uniform(.3, .8), r.uniform(2000, 5000)), CHINA: cymbal(r, r.uniform(.2, .5), r.uniform(1500, 4000)),
            RIDE: ride, BELL: ride + .3 * np.pad(struck_bar(r, 2400, .08), (0, len(ride)))[:len(ride)], SHAKER: hat * .6,
            TAMBOURINE: cymbal(r, .06, 5000), STICK: struck_bar(r, r.uniform(600, 1800), .02), WOOD: struck_bar(r, r.uniform(500, 1200), .05),
            CLAP: clap, BRUSH: snare * .5, TRIANGLE: struck_bar(r, r.uniform(2500, 3800), .3) * .4, COWBELL: struck_bar(r, r.uniform(500, 800), .09)}
    skins = ((LOW_TOM, 80), (MID_TOM, 110), (HIGH_TOM, 150), (CONGA_MUTE, 280), (CONGA_HIGH, 250), (CONGA_LOW, 190), (BONGO_HIGH, 420), (BONGO_LOW, 320))
    for name, hz in skins:
        made[name] = drum(r, hz * r.uniform(.85, 1.2), .4, r.uniform(.07, .25)) * .9
    return made


def play_drums(r, notes, length):
    """All drum notes -> samples; soft strokes are duller, no two alike."""
    sounds = kit(r)
    level = {name: r.uniform(.5, 1.3) for name in sounds}
    level[KICK] = r.uniform(.9, 1.6)
    dull = {name: lfilter([.45], [1, -.55], sound) for name, sound in sounds.items()}
    y = np.zeros(length)
    for note in notes:
        name = note.pitch if note.pitch in sounds else HAT
        a = int(note.start * RATE)
        n = min(len(sounds[name]), length - a)
        if n > 0:
            hard = note.velocity * r.uniform(.9, 1.)
            y[a:a + n] += level[name] * hard * (hard * sounds[name][:n] + (1 - hard) * dull[name][:n])
    return y
