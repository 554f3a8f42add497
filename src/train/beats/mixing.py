"""The band's sound: which part is played by what, and how loud."""
import numpy as np

import instruments
from drums import play_drums
from feature import RATE
from machine import play_machine
from music import *
from soundfont import play_font


def even(x):
    """At one loudness, measured where it sounds."""
    sounding = x[np.abs(x) > 1e-4]
    return x / (np.sqrt(np.mean(sounding ** 2)) + 1e-9) if len(sounding) else x


def _own(r, part, notes, length, is_distorted):
    if part == DRUMS:
        return play_drums(r, notes, length)
    if part == BASS:
        return instruments.bass(r, notes, length)
    if part in (RIFF, MUTED):
        return instruments.distorted(r, notes, length)
    if part == PAD:
        return instruments.strings(r, notes, length)
    return instruments.PITCHED[r.randint(len(instruments.PITCHED))](r, notes, length)


LEVELS = {LEAD: (.3, 1.), COMP: (.3, 1.), BASS: (.4, 1.2), PAD: (.1, .6), RIFF: (.5, 1.5), MUTED: (.5, 1.5), VOICE: (.3, 1.2), DRUMS: (.6, 1.8)}


def mix_band(r, song, played, sources):
    """All notes -> samples. sources: 'mixed', as the songs to train on; 'unseen' plays with what those never use."""
    length = int((max(n.end for n in played) + .7) * RATE)
    by_part = {part: [n for n in played if n.part == part] for part in PARTS}
    by_part[RIFF] += by_part.pop(MUTED)
    if sources == 'unseen':
        y = even(play_machine(r, by_part.pop(DRUMS), length)) * r.uniform(.8, 1.5)
        for part, notes in by_part.items():
            y = y + even(instruments.frequency_modulated(r, notes, length)) * r.uniform(*LEVELS[part])
        return y
    habit = r.choice([0., 0., .5, 1.])  # how likely a part is played by our own instruments
    own = {part: r.rand() < habit or part == VOICE for part in by_part}
    if song.distorted and r.rand() < .5:
        own[RIFF] = True
    y = np.zeros(length)
    by_font = [n for part, notes in by_part.items() if not own[part] for n in notes]
    if by_font:
        y += even(play_font(r, by_font, length, song.distorted)) * r.uniform(.7, 1.5)
    for part, notes in by_part.items():
        if own[part] and notes:
            sound = _own(r, part, notes, length, song.distorted) if part != VOICE else instruments.singer(r, notes, length)
            y += even(sound) * r.uniform(*LEVELS[part])
    return y
