"""A drum machine of modulated tones: like frequency_modulated, a source that training never hears."""
import numpy as np

from drums import seconds
from feature import RATE
from music import *


def _metal(r, decay):
    """Six square waves out of tune."""
    t = seconds(5 * decay)
    cluster = sum(np.sign(np.sin(2 * np.pi * f * r.uniform(.9, 1.1) * t)) for f in (1023, 1567, 2093, 3059, 4187, 5413))
    return np.diff(cluster, prepend=0) * np.exp(-t / decay) * .3


def _struck(r, hz, ratio, depth, decay):
    t = seconds(5 * decay)
    fall = np.exp(-t / decay)
    return np.sin(2 * np.pi * hz * t + depth * fall * np.sin(2 * np.pi * hz * ratio * t)) * fall


def play_machine(r, notes, length):
    hat, open_hat, crash = _metal(r, r.uniform(.02, .05)), _metal(r, .25), _metal(r, .5)
    sounds = {KICK: _struck(r, r.uniform(45, 60), .5, r.uniform(1, 4), .15), SNARE: _struck(r, 190, 7.13, r.uniform(5, 14), .1), HAT: hat,
              PEDAL_HAT: hat, OPEN_HAT: open_hat, RIDE: open_hat * .5, CRASH: crash, CHINA: crash, CLAP: _struck(r, 700, 3.7, 20, .05)}
    y = np.zeros(length)
    for note in notes:
        sound = sounds.get(note.pitch)
        if sound is None:
            sound = sounds[note.pitch] = _struck(r, r.uniform(150, 900), 1.4, 2, .06)
        a = int(note.start * RATE)
        n = min(len(sound), length - a)
        if n > 0:
            y[a:a + n] += sound[:n] * note.velocity
    return y
