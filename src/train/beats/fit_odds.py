#!/usr/bin/python3
"""fit_odds.py FOLDER ODDS: fits the weights of bars and phrases (ODDS, a file as OddsTable reads it; its terms are kept, and
its weights are where the fit begins) on songs whose marks MarkSheet wrote beside their beat files: two logistic regressions,
then the costs of breaking the count and how near the weights stay to those from before, by trying them on the same search as
PhraseSearch's, and what bars of four must gain."""
import glob
import itertools
import sys

import numpy as np
from scipy.optimize import minimize

from score import f_measure, read_beats

RIDGES = 1., 100., 1000.
NEAR_SECONDS = .07


class Heard:
    """A song as it was heard: terms of every beat, and what its bars and counts are (0 = no such beat)."""

    def __init__(self, name):
        lines = open(name).read().splitlines()
        self.bar_names, self.phrase_names = (line.split()[2:] for line in lines[:2])
        rows = np.array([[float(x) for x in line.split()] for line in lines[2:]])
        truth = read_beats(name.replace('.marks', '.beats'))
        self.truth, self.beats_per_bar = truth, int(truth[:, 1].max())
        self.usable = len(rows) > 16
        if not self.usable:
            return
        terms = len(self.bar_names) + len(self.phrase_names)
        self.seconds = rows[:, 0]
        chosen = rows[:, 1 + terms:] if self.beats_per_bar == 3 else rows[:, 1:1 + terms]
        self.bar_terms, self.phrase_terms = chosen[:, :len(self.bar_names)], chosen[:, len(self.bar_names):]
        nearest = np.abs(truth[:, 0][None] - self.seconds[:, None]).argmin(1)
        hit = np.abs(truth[nearest, 0] - self.seconds) < NEAR_SECONDS
        self.bar = np.where(hit, truth[nearest, 1], 0).astype(int)
        self.count = np.where(hit, truth[nearest, 2], 0).astype(int)
        self.usable = hit.mean() > .9 and .87 < len(rows) / len(truth) < 1.15


def regression(terms, is_first, before, ridge):
    """Weights and a constant (last), held near those from before; the stronger the ridge the nearer."""
    x = np.c_[terms, np.ones(len(terms))]

    off = lambda w: np.r_[w[:-1] - before[:-1], 0]

    def loss(w):
        z = x @ w
        p = 1 / (1 + np.exp(-z))
        return (np.logaddexp(0, z) - is_first * z).sum() + ridge * (off(w) ** 2).sum(), x.T @ (p - is_first) + 2 * ridge * off(w)

    return minimize(loss, before, jac=True, method='L-BFGS-B').x


def weights_in(odds, songs):
    """The weights of bars and of phrases that the file has, in the order of the terms; a term that it has not weighs nothing."""
    rows = [line.split() for line in open(odds)]
    there = {(row[0], 'CONSTANT' if row[1] == 'CONSTANT' else f'{row[1]}:{row[2]}'): float(row[3]) for row in rows if row[0] in ('bar', 'phrase')}
    names = ('bar', songs[0].bar_names), ('phrase', songs[0].phrase_names)
    return [np.array([there.get((word, name), 0.) for name in terms + ['CONSTANT']]) for word, terms in names]


def fitted(songs, before, ridge):
    bars = np.concatenate([s.bar for s in songs])
    counts = np.concatenate([s.count for s in songs])
    bar_terms = np.concatenate([s.bar_terms for s in songs])
    phrase_terms = np.concatenate([s.phrase_terms for s in songs])
    bar = regression(bar_terms[bars > 0], (bars[bars > 0] == 1) * 1., before[0], ridge)
    phrase = regression(phrase_terms[bars == 1], (counts[bars == 1] == 1) * 1., before[1], ridge)
    return bar, phrase


def log_logistic(z):
    return -np.logaddexp(0, -z)


def counted(song, bar, phrase, costs, per_bar):
    """The search of PhraseSearch: -> (log likelihood, place in the phrase of each beat)."""
    places = 6 if per_bar == 3 else 8
    b = np.c_[song.bar_terms, np.ones(len(song.seconds))] @ bar
    p = np.c_[song.phrase_terms, np.ones(len(song.seconds))] @ phrase
    fit = np.empty((len(b), places))
    for place in range(places):
        first = place % per_bar == 0
        fit[:, place] = log_logistic(b) if first else log_logistic(-b)
        if first:
            fit[:, place] += log_logistic(p if place == 0 else -p)
    end_cost = np.array([0 if e == places else costs[0] if e % per_bar == 0 else costs[1] if e % 2 == 0 else costs[2] for e in range(1, places + 1)], float)
    best, before = fit[0].copy(), np.zeros((len(b), places), int)
    for i in range(1, len(b)):
        before[i, 1:] = np.arange(places - 1)
        before[i, 0] = int(np.argmax(best - end_cost))
        best = np.r_[(best - end_cost)[before[i, 0]], best[:-1]] + fit[i]
    place = int(np.argmax(best))
    likelihood, path = best[place], [place]
    for i in range(len(b) - 1, 0, -1):
        place = before[i, place]
        path.append(place)
    return likelihood, np.array(path[::-1])


def phrase_score(songs, bar, phrase, costs):
    """Mean F of bars' and of phrases' firsts, bars being known to have as many beats as they have."""
    scores = []
    for s in songs:
        _, place = counted(s, bar, phrase, costs, s.beats_per_bar)
        scores.append((f_measure(s.truth[s.truth[:, 1] == 1, 0], s.seconds[place % s.beats_per_bar == 0]),
                       f_measure(s.truth[s.truth[:, 2] == 1, 0], s.seconds[place == 0])))
    return np.mean(scores, 0)


def four_over_two(songs, bar, phrase, costs):
    """The gain a beat of bars of four over bars of two that parts songs in two from songs in four with the fewest errors."""
    gains = [(counted(s, bar, phrase, costs, 4)[0] - counted(s, bar, phrase, costs, 2)[0]) / len(s.seconds) for s in songs]
    each = [(g, s.beats_per_bar) for g, s in zip(gains, songs) if s.beats_per_bar != 3]
    edges = np.linspace(-.5, .5, 101)
    errors = np.array([sum((g > e) != (per_bar == 4) for g, per_bar in each) for e in edges])
    fewest = edges[errors == errors.min()]
    print(f'two or four: {errors.min()} of {len(each)} wrong, {fewest[0]:.2f} to {fewest[-1]:.2f}')
    return float(fewest.mean())


def main(folder, odds):
    songs = [s for s in map(Heard, sorted(glob.glob(f'{folder}/*.marks'))) if s.usable]
    halves = songs[::2], songs[1::2]
    before = weights_in(odds, songs)
    best, chosen = -1., None
    for after_bar, half_more, ridge in itertools.product((4, 7, 10, 14), (3, 6), RIDGES):
        costs = (after_bar, after_bar + half_more, after_bar + 12)
        each = []
        for learn, test in (halves, halves[::-1]):  # what is tried was not learnt from
            each.append(phrase_score(test, *fitted(learn, before, ridge), costs))
        score = np.mean(each, 0)
        print(f'costs {costs}, ridge {ridge}: bars {score[0]:.3f}, phrases {score[1]:.3f}', flush=True)
        if score.sum() > best:
            best, chosen = score.sum(), (costs, ridge)
    costs, ridge = chosen
    bar, phrase = fitted(songs, before, ridge)
    write(odds, songs, bar, phrase, costs, four_over_two(songs, bar, phrase, costs))
    print(f'{len(songs)} songs; costs {costs}, ridge {ridge}')


def write(odds, songs, bar, phrase, costs, four):
    with open(odds, 'w') as out:
        out.write('# What the marks of a beat weigh; read by OddsTable, written by src/train/beats/fit_odds.py. How it was made: RECIPE.md.\n')
        for word, names, weights in (('bar', songs[0].bar_names, bar), ('phrase', songs[0].phrase_names, phrase)):
            out.write(f'{word} CONSTANT - {weights[-1]:.3f}\n')
            for name, weight in zip(names, weights):
                out.write(f'{word} {name.replace(":", " ")} {weight:.3f}\n')
        for name, cost in zip(('AFTER_A_BAR', 'AFTER_HALF_A_BAR', 'ELSEWHERE'), costs):
            out.write(f'cost {name} - {cost:g}\n')
        out.write(f'metre FOUR_OVER_TWO - {four:.3f}\n')


if __name__ == '__main__':
    main(*sys.argv[1:])
