#!/usr/bin/python3
"""score.py FOLDER HEARD: how well the beat files in HEARD are those in FOLDER. Nothing is trimmed.

F, F35: of 70 and 35 ms (Dixon 2006). CMLt: the share of beats that go on at the right tempo (Hainsworth and Macleod 2004,
tolerance 17.5 %). level: heard beats over true ones. bias, gap: median of heard less true, ms; longest run of missed beats, s.
bar, phrase: F of their firsts."""
import glob
import os
import sys

import numpy as np

LEVELS = (1, 2, .5, 1.5, 2 / 3, 3, 1 / 3, 4, .25)


def read_beats(name):
    """[beat][seconds, beat in the bar, count]"""
    with open(name) as text:
        return np.array([[float(x) for x in line.split()[:3]] for line in text if line.strip() and not line.startswith('#')]).reshape(-1, 3)


def matches(true, heard, within):
    """The most pairs that lie within so many seconds, each used once."""
    pairs, j = 0, 0
    for time in true:
        while j < len(heard) and heard[j] < time - within:
            j += 1
        if j < len(heard) and heard[j] <= time + within:
            pairs, j = pairs + 1, j + 1
    return pairs


def f_measure(true, heard, within=.07):
    return 2 * matches(np.sort(true), np.sort(heard), within) / max(1, len(true) + len(heard)) if len(true) and len(heard) else 0.


def continuity(true, heard, tolerance=.175):
    """Share of beats that are right together with the one before."""
    if len(heard) < 2 or len(true) < 2:
        return 0.
    right = 0
    for i in range(1, len(heard)):
        j = int(np.abs(true - heard[i]).argmin())
        if j == 0:
            continue
        length = true[j] - true[j - 1]
        on = abs(heard[i] - true[j]) < tolerance * length
        before = abs(heard[i - 1] - true[j - 1]) < tolerance * length
        right += on and before and abs((heard[i] - heard[i - 1]) / length - 1) < tolerance
    return right / max(len(heard), len(true))


def level(true, heard):
    ratio = np.median(np.diff(true)) / np.median(np.diff(heard))
    near = min(LEVELS, key=lambda x: abs(np.log(ratio / x)))
    return near if abs(np.log(ratio / near)) < .07 else ratio


def score(true, heard):
    t, h = true[:, 0], heard[:, 0]
    if len(h) < 3:
        return dict(F=0., F35=0., CMLt=0., level=0., bias=np.nan, gap=t[-1] - t[0], bar=0., phrase=0.)
    off = np.array([h[np.abs(h - x).argmin()] - x for x in t])
    hit = np.abs(off) < .07
    gap, since = 0., None
    for x, ok in zip(t, hit):
        since = None if ok else x if since is None else since
        gap = gap if ok else max(gap, x - since + np.median(np.diff(t)))
    firsts = lambda column: f_measure(t[true[:, column] == 1], h[heard[:, column] == 1])
    return dict(F=f_measure(t, h), F35=f_measure(t, h, .035), CMLt=continuity(t, h), level=level(t, h),
                bias=1000 * np.median(off[hit]) if hit.any() else np.nan, gap=gap, bar=firsts(1), phrase=firsts(2))


def style_of(name):
    with open(name) as text:
        return next((line.split()[2] for line in text if line.startswith('# style')), '')


def main(folder, heard_folder):
    rows = []
    for name in sorted(glob.glob(f'{folder}/*.beats')):
        heard_name = f'{heard_folder}/{os.path.basename(name)}'
        heard = read_beats(heard_name) if os.path.exists(heard_name) else np.zeros((0, 3))
        row = score(read_beats(name), heard)
        rows.append(row)
        print(f'{os.path.basename(name)[:-6]:14s} {style_of(name):11s} ' + ' '.join(f'{k} {v:.3f}' for k, v in row.items()))
    mean = lambda key: np.nanmean([row[key] for row in rows])
    right, good = sum(row['level'] == 1 for row in rows), sum(row['F'] >= .98 for row in rows)
    print(f'{len(rows)} songs: F {mean("F"):.3f} F35 {mean("F35"):.3f} CMLt {mean("CMLt"):.3f}, right level {right}, F >= .98 {good}, '
          f'bias {np.nanmedian([row["bias"] for row in rows]):+.1f} ms, gap {mean("gap"):.1f} s, bar {mean("bar"):.3f}, phrase {mean("phrase"):.3f}')


if __name__ == '__main__':
    main(*sys.argv[1:])
