"""From beats to seconds: tempo with drift, jumps and pauses, swing, and players who are not machines."""
from dataclasses import dataclass

import numpy as np

from music import *


@dataclass(frozen=True)
class Played:
    """A note in seconds."""

    start: float
    end: float
    pitch: int
    velocity: float
    part: int


class TempoMap:
    """Seconds of any beat: slow wandering, a late change of tempo now and then, pauses; linear between eighths of beats."""

    STEP = .125

    def __init__(self, r, song):
        self.grid = np.arange(-2, song.end() + 8, self.STEP)
        bpm = np.full(len(self.grid), song.bpm)
        drift = r.choice([0, 0, .004, .01, .02, .04])
        if drift:
            knots = np.arange(-2, song.end() + 32, 12.)
            wander = np.interp(self.grid, knots, np.cumsum(r.randn(len(knots)))) + np.sin(2 * np.pi * self.grid / r.uniform(20, 90))
            wander -= wander.mean()
            bpm = bpm * (1 + drift * wander / (np.abs(wander).max() + 1e-9))
        if r.rand() < .06:
            bpm[self.grid > song.end() * r.uniform(.3, .7)] *= r.uniform(.87, 1.15)
        if r.rand() < .12:  # the last bars slow down
            tail = self.grid > song.end() - 4
            bpm[tail] *= np.linspace(1, r.uniform(.75, .95), tail.sum())
        seconds = np.concatenate([[0], np.cumsum(60 / bpm[:-1] * self.STEP)])
        for beat, length in song.pauses:
            seconds[self.grid >= beat - 1e-6] += length
        self.seconds = seconds - np.interp(0, self.grid, seconds) + r.uniform(.05, 2.)

    def __call__(self, beat):
        return float(np.interp(beat, self.grid, self.seconds))


def swung(r, notes, steps_known):
    """Straight songs now and then swing a little, in eighths or sixteenths."""
    if r.rand() > .2 or not steps_known:
        return notes
    amount, eighths = r.uniform(.02, .12), r.rand() < .6

    def move(beat):
        part = beat % 1
        if eighths:
            return beat + (amount if .2 < part < .8 else 0)
        return beat + (amount / 2 if (beat * 2) % 1 > .2 else 0)

    return [Note(move(n.beat), n.beats, n.pitch, n.velocity, n.part) for n in notes]


def play(r, song, steps):
    """Plays a song: -> (played notes, times of its beats in seconds, rows (beat in bar, count)). Each player has a habit of
    being early or late, drums drag or push single drums, and every stroke strays."""
    tempo = TempoMap(r, song)
    stray = r.choice([.001, .004, .007, .011, .015])
    lag = {part: r.randn() * .6 * stray for part in PARTS}
    lag[DRUMS] = 0
    drum_lag = {drum: r.randn() * .3 * stray for drum in range(128)}
    drum_lag[KICK] = 0
    together = {}
    played = []
    breath = r.uniform(0, .15)
    for note in swung(r, song.notes, steps == 4):
        key = (round(note.beat * 12), note.part, note.pitch if note.part == DRUMS else 0)
        strayed = together.setdefault(key, float(np.clip(r.randn(), -2, 2)) * stray * (.6 if note.part == DRUMS else 1))
        late = lag[note.part] + strayed + (drum_lag[note.pitch] if note.part == DRUMS else 0)
        start = max(.005, tempo(note.beat) + late)
        end = max(start + .05, tempo(note.beat + note.beats) + lag[note.part])
        swell = 1 + breath * np.sin(2 * np.pi * note.beat / 16)
        velocity = float(np.clip(note.velocity * swell * (1 + .08 * r.randn()), .04, 1))
        played.append(Played(start, end, note.pitch, velocity, note.part))
    counted = list(song.counted())
    return played, np.array([tempo(beat) for beat, _, _ in counted]), [(b, c) for _, b, c in counted]
