"""Songs as they were heard, beat by beat, and the sums over all ways to count them: the forward-backward sums of Rabiner 1989,
"A tutorial on hidden Markov models", over places in the phrase, for all songs side by side."""
import numpy as np

from score import read_beats

METRES = 2, 3, 4
NEAR_SECONDS = .07
NEVER = 1e-9


def places_in(per_bar):
    return 6 if per_bar == 3 else 8


def break_kinds(per_bar):
    """By last place of a phrase: -1 whole, 0 after a bar, 1 after half a bar, 2 elsewhere."""
    places = places_in(per_bar)
    return np.array([-1 if n == places else 0 if n % per_bar == 0 else 1 if n % 2 == 0 else 2 for n in range(1, places + 1)])


def start_kinds(per_bar):
    """By place of a song's first beat: -1 with the phrase, 0 as a pickup to it, 1 elsewhere."""
    places, last_bar = places_in(per_bar), 3 if per_bar == 3 else 4
    return np.array([-1 if n == 0 else 0 if n > places - last_bar else 1 for n in range(places)])


def costs_of(kinds, costs):
    return np.array([0. if kind < 0 else costs[kind] for kind in kinds])


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
        self.count_back()
        self.usable = hit.mean() > .9 and .87 < len(rows) / len(self.truth) < 1.15

    def count_back(self):
        """Beats heard in the silence before the first true one are counted as if the song had begun with them."""
        beat, first = np.median(np.diff(self.truth[:, 0])), self.truth[0, 2]
        back = (self.truth[0, 0] - self.seconds) / beat
        early = (self.count == 0) & (back > .5) & (np.abs(back - np.rint(back)) < .2)
        self.count[early] = (first - 1 - np.rint(back[early])).astype(int) % places_in(self.per_bar) + 1


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
        self.per_bar, self.kinds, self.starts = per_bar, break_kinds(per_bar), start_kinds(per_bar)
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

    def sums(self, bar_weights, phrase_weights, costs, start_costs):
        """Sums over all ways to count, then over the true ones -> (logarithm, chance of each place at each beat, expected
        breaks after each place)"""
        self.bar_odds, self.phrase_odds = self.bar @ bar_weights, self.phrase @ phrase_weights
        fit = fit_of(self.bar_odds, self.phrase_odds, self.per_bar)
        highest = fit.max(2, keepdims=True)
        chance = np.exp(fit - highest)
        end, start = np.exp(-costs_of(self.kinds, costs)), np.exp(-costs_of(self.starts, start_costs))
        chance[:, 0] *= start
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
