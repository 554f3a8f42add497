#!/usr/bin/python3
"""fit_odds.py FOLDER ODDS: fits the weights of bars and phrases (ODDS, a file as OddsTable reads it; its terms are kept) on
songs whose marks MarkSheet wrote beside their beat files.

All weights, the costs of breaking the count and of beginning amid it, and the gains of the metres are fitted together, so that of all ways to count a
song, in bars of two, three and four, the true one becomes likely (conditional random field: Lafferty, McCallum and Pereira
2001, "Conditional random fields"). How near to nothing the weights are held is tried on songs that they were
not fitted on."""
import glob
import sys

import numpy as np
from scipy.optimize import minimize

from chains import METRES, Chains, Heard, break_kinds, costs_of, fit_of, start_kinds
from score import f_measure

RIDGES = 5., 15., 45.
ROUNDS = 60
FEWEST_SONGS = 2  # one half is learnt from, the other tried


class Weights:
    """The numbers that are fitted, as one row: bar terms, phrase terms (each with a constant, last), costs of breaks and of
    starts, metres two and three."""

    def __init__(self, songs, row=None):
        self.bars, self.phrases = len(songs[0].bar_names) + 1, len(songs[0].phrase_names) + 1
        self.row = np.r_[np.zeros(self.bars + self.phrases), 8., 12., 16., 1., 4., 0., 0.] if row is None else row
        self.bar, self.phrase = self.row[:self.bars], self.row[self.bars:self.bars + self.phrases]
        self.costs, self.starts, self.metres = self.row[-7:-4], self.row[-4:-2], dict(zip(METRES, np.r_[self.row[-2:], 0.]))
        self.held = np.ones(len(self.row))  # constants, costs and metres are free
        self.held[[self.bars - 1, self.bars + self.phrases - 1, -7, -6, -5, -4, -3, -2, -1]] = 0


def fitted(songs, ridge):
    chains = {per_bar: Chains(songs, per_bar) for per_bar in METRES}
    lengths = np.array([len(s.seconds) for s in songs], float)
    n = len(songs)

    def loss(row):
        w = Weights(songs, row)
        sums = {m: c.sums(w.bar, w.phrase, w.costs, w.starts) for m, c in chains.items()}
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
                    slope[-7 + kind] -= over[place]
            for place, kind in enumerate(c.starts):
                if kind >= 0:
                    slope[-4 + kind] -= expected[:, 0, place].sum()
            if m != METRES[-1]:
                slope[-2 + i] += share @ lengths - lengths[c.own].sum()
        return value, slope

    start = Weights(songs)
    bounds = [(None, None)] * (len(start.row) - 7) + [(0, 30)] * 5 + [(-1, 1)] * 2
    return Weights(songs, minimize(loss, start.row, jac=True, method='L-BFGS-B', bounds=bounds, options=dict(maxiter=ROUNDS)).x)


def counted(song, w, per_bar):
    """The search of PhraseSearch: -> (log likelihood, place in the phrase of each beat)."""
    bar, phrase = song.terms[per_bar]
    fit = fit_of(bar @ w.bar, phrase @ w.phrase, per_bar)
    end_cost = costs_of(break_kinds(per_bar), w.costs)
    best, before = fit[0] - costs_of(start_kinds(per_bar), w.starts), np.zeros(fit.shape, int)
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
    heard = [Heard(name) for name in sorted(glob.glob(f'{folder}/*.marks'))]
    songs = [s for s in heard if s.usable]
    if len(songs) < FEWEST_SONGS:
        sys.exit(f'{folder}: of {len(heard)} songs with marks only {len(songs)} are heard well enough to learn from, and {FEWEST_SONGS} are needed, '
                 f'so {odds} stays as it is. Train longer (MINUTES) or make more songs (FIT_SONGS).')
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
        for name, cost in zip(('PICKUP', 'ELSEWHERE'), w.starts):
            out.write(f'start {name} - {cost:.2f}\n')
        for metre, gain in w.metres.items():
            out.write(f'metre {metre} - {gain:.3f}\n')


if __name__ == '__main__':
    main(*sys.argv[1:])
