#!/usr/bin/python3
"""generate.py SPLIT FIRST LAST FOLDER: makes the songs FIRST to LAST - 1 of a split.

Splits (each song's number is its seed, and no two splits share seeds):
  train, valid  45 to 60 s, heard in two ways -> FOLDER/SPLIT-NNNNN-V.npz (feature, beats, firsts of bars, firsts of phrases);
                a few are talk and tones without any beat
  fit, unseen   110 to 150 s -> WAV and beat file; for the weights of bars and phrases, and for scoring
  style         as unseen, in a style that training never meets
  source        as unseen, played by sources that training never hears

Whole songs are mastered, as songs that are sold are: as they are played and heard here they lie between -8 and -35 LUFS, and
noise of one level, such as a hall has, would drown some and leave others alone. Those for scoring are also kept as they were,
in FOLDER/unmastered.
"""
import os
import sys

import numpy as np
from scipy.io import wavfile

from feature import RATE, magnitudes
from form import write_song
from hall import heard, talked_over
from instruments import PITCHED
from mastering import mastered
from mixing import mix_band
from performance import Played, play
from styles import STYLES, UNSEEN_STYLES

SEEDS = {'train': 1_000_000, 'valid': 2_000_000, 'fit': 3_000_000, 'unseen': 4_000_000, 'style': 5_000_000, 'source': 6_000_000}
CLIPS, WAYS = ('train', 'valid'), 2
SCORED = 'unseen', 'style', 'source'
WITHOUT_BEAT = .025


def steps_of(style_name):
    return next(s.steps for s in STYLES + UNSEEN_STYLES if s.name == style_name)


def made(split, number):
    """-> (random source, song, samples, beat times, (beat in bar, count) of each beat)"""
    r = np.random.RandomState(SEEDS[split] + number)
    styles = UNSEEN_STYLES if split == 'style' else STYLES
    song = write_song(r, styles, r.uniform(45, 60) if split in CLIPS else r.uniform(110, 150))
    played, beats, counts = play(r, song, steps_of(song.style))
    return r, song, mix_band(r, song, played, 'unseen' if split == 'source' else 'mixed'), beats, counts


def beatless(r):
    """Tones at any time, over talk."""
    starts = np.sort(r.uniform(0, 48, r.randint(0, 200)))
    tones = [Played(t, t + r.uniform(.1, 3), int(r.randint(40, 80)), r.uniform(.2, 1), 0) for t in starts]
    sound = PITCHED[r.randint(len(PITCHED))](r, tones, 50 * RATE) + .01 * r.randn(50 * RATE)
    return talked_over(r, sound)


def write_clip(split, number, folder):
    r, song, samples, beats, counts = made(split, number)
    if r.rand() < WITHOUT_BEAT:
        samples, beats, counts = beatless(r), np.zeros(0), []
    firsts = np.array([t for t, (bar, _) in zip(beats, counts) if bar == 1])
    phrases = np.array([t for t, (_, count) in zip(beats, counts) if count == 1])
    for way in range(WAYS):
        sound = heard(np.random.RandomState(r.randint(1 << 30)), samples.copy())
        np.savez(f'{folder}/{split}-{number:05d}-{way}.npz', feature=np.log(magnitudes(sound)).astype(np.float16), beats=beats, firsts=firsts,
                 phrases=phrases, style=song.style, bpm=song.bpm)


def write_whole(split, number, folder):
    r, song, samples, beats, counts = made(split, number)
    sound = heard(np.random.RandomState(r.randint(1 << 30)), samples)
    said = f'# style {song.style}\n# bpm {song.bpm:.0f}\n# bar {song.beats_per_bar}\n'
    said += ''.join(f'{time:.4f}\t{bar}\t{count}\n' for time, (bar, count) in zip(beats, counts))
    name = f'{split}{number:04d}'
    if split in SCORED:
        write_song_file(sound, said, f'{folder}/unmastered', name)
    write_song_file(mastered(sound), said, folder, name)


def write_song_file(sound, said, folder, name):
    os.makedirs(folder, exist_ok=True)
    wavfile.write(f'{folder}/{name}.wav', RATE, (np.clip(sound, -1, 1) * 32000).astype(np.int16))
    with open(f'{folder}/{name}.beats', 'w') as out:
        out.write(said)


def main(split, first, last, folder):
    os.makedirs(folder, exist_ok=True)
    clip = split in CLIPS
    for number in range(int(first), int(last)):
        done = f'{folder}/{split}-{number:05d}-{WAYS - 1}.npz' if clip else f'{folder}/{split}{number:04d}.beats'
        if not os.path.exists(done):
            (write_clip if clip else write_whole)(split, number, folder)


if __name__ == '__main__':
    main(*sys.argv[1:])
