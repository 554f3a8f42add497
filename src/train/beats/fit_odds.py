#!/usr/bin/python3
"""fit_odds.py FOLDER ODDS: fits the weights of bars and phrases (ODDS, a file as OddsTable reads it; its terms are kept) on
songs whose marks MarkSheet wrote beside their beat files.

All weights, the costs of breaking the count and the gains of the metres are fitted together, so that of all ways to count a
song, in bars of two, three and four, the true one becomes likely (conditional random field: Lafferty, McCallum and Pereira
2001; by the forward-backward sums of Rabiner 1989). How near to nothing the weights are held is tried on songs that they were
not fitted on."""
import glob
import sys

import numpy as np
from scipy.optimize import minimize

from score import f_measure, read_beats

METRES = 2, 3, 4
RIDGES = 5., 15., 45.
ROUNDS = 60
NEAR_SECONDS = .07
NEVER = 1e-9


def places_in(per_bar):
    return 6 if per_bar == 3 else 8


def break_kinds(per_bar):
    """By last place of a phrase: -1 whole, 0 after a bar, 1 after half a bar, 2 elsewhere."""
    places = places_in(per_bar)
    return np.array([-1 if n == places else 0 if n % per_bar == 0 else 1 if n % 2 == 0 else 2 for n in range(1, places + 1)])


def log_logistic(z):
    return -np.logaddexp(0, -z)


def logistic(z):
    return np.exp(log_logistic(z))


class Heard:
    """A song as it was heard: the terms of every beat, in fours and in threes, and its true counts (0 = no such beat)."""

    def __init__(self, name):
        lines = open(name).read().splitlines()
        self.bar_names, self.phrase_names = (line.split()[2:] for line in lines[:2])
        rows = np.array([[float(x) for x in line.split()] for line in lines[2:]])
        self.truth = read_beats(name.replace('.marks', '.beats'))
        self.per_bar = int(self.truth[:, 1].max())
        self.usable = len(rows) > 16
        if not self.usable:
            return
        terms, bars = len(self.bar_names) + len(self.phrase_names), len(self.bar_names)
        self.seconds = rows[:, 0]
        one = np.ones((len(rows), 1))
        split = lambda part: (np.c_[part[:, :bars], one], np.c_[part[:, bars:], one])
        fours, threes = split(rows[:, 1:1 + terms]), split(rows[:, 1 + terms:])
        self.terms = {2: fours, 3: threes, 4: fours}
        nearest = np.abs(self.truth[:, 0][None] - self.seconds[:, None]).argmin(1)
        hit = np.abs(self.truth[nearest, 0] - self.seconds) < NEAR_SECONDS
        self.count = np.where(hit, self.truth[nearest, 2], 0).astype(int)
        self.usable = hit.mean() > .9 and .87 < len(rows) / len(self.truth) < 1.15


def fit_of(bar, phrase, per_bar):
    """[..., place]: how well beats with these odds fit each place, as PhraseSearch has it."""
    columns = []
    for place in range(places_in(per_bar)):
        first = log_logistic(bar) + log_logistic(phrase if place == 0 else -phrase)
        columns.append(log_logistic(-bar) if place % per_bar else first)
    return np.stack(columns, -1)


class Chains:
    """All songs, counted in one metre; those that have it also along their true counts."""

    def __init__(self, songs, per_bar):
        self.per_bar, self.kinds = per_bar, break_kinds(per_bar)
        longest = max(len(s.seconds) for s in songs)
        pad = lambda rows: np.pad(rows, ((0, longest - len(rows)), (0, 0))).astype(np.float32)
        self.bar = np.stack([pad(s.terms[per_bar][0]) for s in songs])
        self.phrase = np.stack([pad(s.terms[per_bar][1]) for s in songs])
        self.inside = np.arange(longest)[None] < np.array([len(s.seconds) for s in songs])[:, None]
        self.own = np.flatnonzero([s.per_bar == per_bar for s in songs])
        self.allowed = np.ones((len(self.own), longest, places_in(per_bar)))
        for row, song in zip(self.allowed, (songs[i] for i in self.own)):
            known = np.flatnonzero(song.count)
            row[known] = NEVER
            row[known, song.count[known] - 1] = 1

    def sums(self, bar_weights, phrase_weights, costs):
        """Sums over all ways to count, then over the true ones -> (logarithm, chance of each place at each beat, expected
        breaks after each place)"""
        self.bar_odds, self.phrase_odds = self.bar @ bar_weights, self.phrase @ phrase_weights
        fit = fit_of(self.bar_odds, self.phrase_odds, self.per_bar)
        highest = fit.max(2, keepdims=True)
        chance = np.exp(fit - highest)
        end = np.array([1. if kind < 0 else np.exp(-costs[kind]) for kind in self.kinds])
        inside = np.concatenate([self.inside, self.inside[self.own]])
        logs, places, breaks = forward_backward(np.concatenate([chance, chance[self.own] * self.allowed]), end, inside)
        scale = (highest[:, :, 0] * self.inside).sum(1)
        return logs + np.concatenate([scale, scale[self.own]]), places, breaks

    def slopes(self, places):
        """How the sum of logarithms whose places these are changes with the weights of bars and of phrases."""
        first = np.arange(places.shape[2]) % self.per_bar == 0
        later = first & (np.arange(places.shape[2]) > 0)
        bar, phrase = logistic(self.bar_odds), logistic(self.phrase_odds)
        by_bar = places[:, :, first].sum(2) * (1 - bar) - places[:, :, ~first].sum(2) * bar
        by_phrase = places[:, :, 0] * (1 - phrase) - places[:, :, later].sum(2) * phrase
        return np.tensordot(by_bar, self.bar, 2), np.tensordot(by_phrase, self.phrase, 2)


def forward_backward(chance, end, inside):
    songs, beats, places = chance.shape
    forward, scales = np.zeros_like(chance), np.ones((songs, beats))
    now = chance[:, 0]
    for t in range(beats):
        if t:
            now = np.c_[forward[:, t - 1] @ end, forward[:, t - 1, :-1]] * chance[:, t]
        scales[:, t] = np.where(inside[:, t], now.sum(1), 1)
        forward[:, t] = np.where(inside[:, t, None], now / scales[:, t, None], forward[:, t - 1])
    backward, chances, breaks = np.ones((songs, places)), np.zeros_like(chance), np.zeros((songs, places))
    for t in range(beats - 1, -1, -1):
        chances[:, t] = forward[:, t] * backward * inside[:, t, None]
        if t:
            ahead = chance[:, t] * backward / scales[:, t, None]
            before = end * ahead[:, :1]
            breaks += forward[:, t - 1] * before * inside[:, t, None]
            before[:, :-1] += ahead[:, 1:]
            backward = np.where(inside[:, t, None], before, backward)
    return np.log(scales).sum(1), chances, breaks


class Weights:
    """The numbers that are fitted, as one row: bar terms, phrase terms (each with a constant, last), costs, metres two and three."""

    def __init__(self, songs, row=None):
        self.bars, self.phrases = len(songs[0].bar_names) + 1, len(songs[0].phrase_names) + 1
        self.row = np.r_[np.zeros(self.bars + self.phrases), 8., 12., 16., 0., 0.] if row is None else row
        self.bar, self.phrase = self.row[:self.bars], self.row[self.bars:self.bars + self.phrases]
        self.costs, self.metres = self.row[-5:-2], dict(zip(METRES, np.r_[self.row[-2:], 0.]))
        self.held = np.ones(len(self.row))  # constants, costs and metres are free
        self.held[[self.bars - 1, self.bars + self.phrases - 1, -5, -4, -3, -2, -1]] = 0


def fitted(songs, ridge):
    chains = {per_bar: Chains(songs, per_bar) for per_bar in METRES}
    lengths = np.array([len(s.seconds) for s in songs], float)
    n = len(songs)

    def loss(row):
        w = Weights(songs, row)
        sums = {m: c.sums(w.bar, w.phrase, w.costs) for m, c in chains.items()}
        logs = np.stack([sums[m][0][:n] + w.metres[m] * lengths for m in METRES])
        total = np.logaddexp.reduce(logs, 0)
        value, slope = total.sum() + ridge * (w.held * row ** 2).sum(), 2 * ridge * w.held * row
        for i, (m, c) in enumerate(chains.items()):
            share = np.exp(logs[i] - total)
            _, places, breaks = sums[m]
            value -= (sums[m][0][n:] + w.metres[m] * lengths[c.own]).sum()
            expected = places[:n] * share[:, None, None]
            expected[c.own] -= places[n:]
            bar, phrase = c.slopes(expected)
            slope[:w.bars] += bar
            slope[w.bars:w.bars + w.phrases] += phrase
            over = (breaks[:n] * share[:, None]).sum(0) - breaks[n:].sum(0)
            for place, kind in enumerate(c.kinds):
                if kind >= 0:
                    slope[-5 + kind] -= over[place]
            if m != METRES[-1]:
                slope[-2 + i] += share @ lengths - lengths[c.own].sum()
        return value, slope

    start = Weights(songs)
    bounds = [(None, None)] * (len(start.row) - 5) + [(0, 30)] * 3 + [(-1, 1)] * 2
    return Weights(songs, minimize(loss, start.row, jac=True, method='L-BFGS-B', bounds=bounds, options=dict(maxiter=ROUNDS)).x)


def counted(song, w, per_bar):
    """The search of PhraseSearch: -> (log likelihood, place in the phrase of each beat)."""
    bar, phrase = song.terms[per_bar]
    fit = fit_of(bar @ w.bar, phrase @ w.phrase, per_bar)
    end_cost = np.array([0. if kind < 0 else w.costs[kind] for kind in break_kinds(per_bar)])
    best, before = fit[0].copy(), np.zeros(fit.shape, int)
    for i in range(1, len(fit)):
        before[i, 1:] = np.arange(fit.shape[1] - 1)
        before[i, 0] = int(np.argmax(best - end_cost))
        best = np.r_[(best - end_cost)[before[i, 0]], best[:-1]] + fit[i]
    place = int(np.argmax(best))
    likelihood, path = best[place] + w.metres[per_bar] * len(fit), [place]
    for i in range(len(fit) - 1, 0, -1):
        place = before[i, place]
        path.append(place)
    return likelihood, np.array(path[::-1])


def scored(songs, w):
    """F of bars' and of phrases' firsts and whether the metre is right, a row a song."""
    rows = []
    for s in songs:
        found = {m: counted(s, w, m) for m in METRES}
        metre = max(METRES, key=lambda m: found[m][0])
        place = found[metre][1]
        rows.append((f_measure(s.truth[s.truth[:, 1] == 1, 0], s.seconds[place % metre == 0]),
                     f_measure(s.truth[s.truth[:, 2] == 1, 0], s.seconds[place == 0]), metre == s.per_bar))
    return np.array(rows)


def main(folder, odds):
    songs = [s for s in map(Heard, sorted(glob.glob(f'{folder}/*.marks'))) if s.usable]
    halves = songs[::2], songs[1::2]
    best, chosen = -1., RIDGES[0]
    for ridge in RIDGES:
        rows = [scored(test, fitted(learn, ridge)) for learn, test in (halves, halves[::-1])]  # what is tried was not learnt from
        bars, phrases, metres = np.concatenate(rows).mean(0)
        print(f'ridge {ridge}: bars {bars:.3f}, phrases {phrases:.3f}, metre right {metres:.3f}', flush=True)
        if bars + phrases > best:
            best, chosen = bars + phrases, ridge
    write(odds, songs, fitted(songs, chosen))
    print(f'{len(songs)} songs; ridge {chosen}')


def write(odds, songs, w):
    with open(odds, 'w') as out:
        out.write('# What the marks of a beat weigh; read by OddsTable, written by src/train/beats/fit_odds.py. How it was made: RECIPE.md.\n')
        for word, names, weights in (('bar', songs[0].bar_names, w.bar), ('phrase', songs[0].phrase_names, w.phrase)):
            out.write(f'{word} CONSTANT - {weights[-1]:.3f}\n')
            for name, weight in zip(names, weights):
                out.write(f'{word} {name.replace(":", " ")} {weight:.3f}\n')
        for name, cost in zip(('AFTER_A_BAR', 'AFTER_HALF_A_BAR', 'ELSEWHERE'), w.costs):
            out.write(f'cost {name} - {cost:.2f}\n')
        for metre, gain in w.metres.items():
            out.write(f'metre {metre} - {gain:.3f}\n')


if __name__ == '__main__':
    main(*sys.argv[1:])
