"""Plays notes with FluidSynth and the FluidR3 GM sound font (MIT licence, Frank Wen and others), as the demo songs are."""
import os
import struct
import subprocess
import tempfile

import numpy as np

from feature import RATE
from music import *

FONT = '/usr/share/sounds/sf2/FluidR3_GM.sf2'  # Debian: fluid-soundfont-gm
TICKS = 10000  # a second

LEADS = (0, 21, 22, 40, 52, 53, 54, 56, 65, 66, 68, 71, 73, 74, 80, 81, 105, 110, 11, 26, 27)
LEADS_DISTORTED = (29, 30, 30, 29, 81, 53, 16)
COMPS = (0, 1, 3, 4, 5, 16, 18, 21, 23, 24, 25, 25, 26, 27, 28, 6, 46, 105, 61, 62, 90)
BASSES = (32, 33, 33, 34, 34, 35, 36, 38, 39, 43, 58)
PADS = (48, 49, 50, 51, 52, 88, 89, 90, 91, 94, 16, 19, 21)
KITS = (0, 0, 0, 8, 16, 24, 25, 32, 40)


def _length(n):
    """A number as MIDI files write lengths."""
    out = [n & 127]
    n >>= 7
    while n:
        out.append(n & 127 | 128)
        n >>= 7
    return bytes(reversed(out))


def _midi(r, notes, is_distorted):
    choose = lambda choices: int(choices[r.randint(len(choices))])
    programs = {LEAD: choose(LEADS_DISTORTED if is_distorted else LEADS), COMP: choose(COMPS), BASS: choose(BASSES), PAD: choose(PADS),
                RIFF: choose((29, 30)), MUTED: choose((28, 29, 30)), VOICE: choose((52, 53, 54, 65)), DRUMS: choose(KITS)}
    volumes = {LEAD: (60, 110), COMP: (55, 105), BASS: (70, 120), PAD: (45, 85), RIFF: (70, 105), MUTED: (80, 120), VOICE: (60, 100), DRUMS: (75, 127)}
    track = bytearray(_length(0) + b'\xff\x51\x03' + struct.pack('>I', 1000000)[1:])
    for channel, program in programs.items():
        track += _length(0) + bytes([0xC0 | channel, program])
        track += _length(0) + bytes([0xB0 | channel, 7, int(r.uniform(*volumes[channel]))])
        track += _length(0) + bytes([0xB0 | channel, 91, r.randint(0, 60)])
    events = []
    for note in notes:
        pitches = [note.pitch] if note.part not in (RIFF, MUTED) else [note.pitch, note.pitch + 7, note.pitch + 12]
        end = min(note.end, note.start + .11) if note.part == MUTED else note.end
        for pitch in pitches:
            pitch = int(np.clip(pitch, 20, 110))
            events.append((note.start, 1, note.part, pitch, int(np.clip(note.velocity * 120, 1, 127))))
            events.append((end, 0, note.part, pitch, 0))
    before = 0
    for at, on, channel, pitch, velocity in sorted(events):
        tick = round(at * TICKS)
        track += _length(tick - before) + bytes([(0x90 if on else 0x80) | channel, pitch, velocity])
        before = tick
    track += _length(15000) + b'\xff\x2f\x00'
    return b'MThd' + struct.pack('>IHHH', 6, 0, 1, TICKS) + b'MTrk' + struct.pack('>I', len(track)) + bytes(track)


def play_font(r, notes, length, is_distorted):
    """Notes of any parts -> samples."""
    with tempfile.TemporaryDirectory() as folder:
        score, sound = os.path.join(folder, 'a.mid'), os.path.join(folder, 'a.raw')
        with open(score, 'wb') as out:
            out.write(_midi(r, notes, is_distorted))
        command = ['fluidsynth', '-ni', '-q', '-g', '0.4', '-r', str(RATE), '-C', '0', '-R', str(int(r.rand() < .5)),
                   '-T', 'raw', '-F', sound, FONT, score]
        subprocess.run(command, check=True, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
        x = np.fromfile(sound, np.int16).reshape(-1, 2).mean(1) / 32768.
    return np.pad(x, (0, max(0, length - len(x))))[:length]
