"""Lays a song out: sections of bars with their own grooves and players, intros, breaks, stops, fills, pickups, odd tags
and pauses; the result is a MadeSong on a scale of beats."""
import numpy as np

import band
from music import *

LOUDNESS = {'X': 1., 'x': .75, 'o': .5, 'g': .28, '?': .6}
MAJOR, MINOR = (0, 2, 4, 5, 7, 9, 11), (0, 2, 3, 5, 7, 8, 10)
ROUNDS = ((0, 3, 4, 0), (0, 5, 3, 4), (0, 4, 5, 3), (0, 0, 3, 0), (0, 3, 0, 4), (5, 3, 0, 4), (0, 0, 4, 4), (0, 6, 3, 0), (0, 3, 5, 4))


class Section:
    """What is played alike wherever this section comes back."""

    def __init__(self, r, style):
        steps = style.beats_per_bar * style.steps
        take = lambda choices: choices[r.randint(len(choices))]
        self.groove = band.random_groove(r, style) if r.rand() < style.wild else take(style.grooves)
        self.bass = [band.bass_line(r, take(style.bass), steps, style.steps) for _ in range(2)]
        self.comp_kind = take(style.comp)
        self.comp = band.comp_steps(r, self.comp_kind, steps, style.steps)
        self.riffs = [band.riff(r, steps, style.steps) for _ in range(2)]
        self.round = [int(x) for x in (ROUNDS[r.randint(len(ROUNDS))] if r.rand() < .75 else r.randint(0, 7, 8))]
        self.bars_a_chord = float(r.choice([.5, 1, 1, 1, 1, 2, 2]) if style.beats_per_bar > 2 else r.choice([1, 1, 2, 2, 4]))
        self.motifs = {}
        self.pushes = r.rand() < .1 and style.steps == 4
        self.level = r.uniform(.8, 1.)


class Writer:
    """Writes one song, note by note."""

    def __init__(self, r, style, seconds):
        self.r, self.style = r, style
        low, high = style.tempo
        bpm = low * (high / low) ** r.rand()
        distorted = r.rand() < style.distorted
        phrase = 6 if style.beats_per_bar == 3 else 8
        self.song = MadeSong(style.name, bpm, style.beats_per_bar, phrase, distorted)
        self.scale = MINOR if r.rand() < (.7 if distorted else .35) else MAJOR
        self.key = r.randint(12)
        self.total = seconds * bpm / 60
        self.steps = style.beats_per_bar * style.steps
        self.plays_lead, self.plays_voice = r.rand() < .7, r.rand() < .55
        self.plays_comp, self.plays_pad = r.rand() < (.4 if style.name == 'metal' else .88), r.rand() < .35
        self.kits = {}
        self.fills_often = r.uniform(.3, .95)
        self.crashes_often = r.uniform(.2, .95)

    def write(self):
        beat = self.pickup()
        while beat < self.total:
            beat = self.section(beat, is_intro=beat < self.style.beats_per_bar)
        return self.song

    def add(self, beat, beats, pitch, velocity, part):
        self.song.notes.append(Note(beat, beats, int(pitch), float(np.clip(velocity, .05, 1)), part))

    def pickup(self):
        """One to three beats before the first bar, tune or drums."""
        r, per_bar = self.r, self.style.beats_per_bar
        if r.rand() > .22:
            return 0
        beats = int(r.randint(1, per_bar)) if per_bar > 1 else 1
        self.song.bars.append(Bar(0, beats, False, per_bar - beats + 1))
        for i in range(beats):
            if r.rand() < .7:
                self.add(i, .9, 67 + (self.key + r.choice([0, 2, 4, 7])) % 12, .8, LEAD)
            if r.rand() < .4:
                self.add(i, .2, r.choice([STICK, SNARE, HAT]), .8, DRUMS)
        return beats

    def section(self, beat, is_intro):
        r, style = self.r, self.style
        kind = r.randint(3)
        section = self.kits.setdefault(kind, Section(r, style))
        two = 2 if style.beats_per_bar == 2 else 1
        bars = two * int(r.choice([4, 8, 8, 8, 8, 16] if style.beats_per_bar == 3 or r.rand() < .9 else [5, 6, 7, 9, 12]))
        drums = r.rand() < (.7 if is_intro else .93)
        bass = r.rand() < (.7 if is_intro else .93)
        comp = r.rand() < .9 or not (drums or bass)
        players = dict(drums=drums, bass=bass, comp=comp, tune=r.rand() < (.4 if is_intro else .85), breaks=r.rand() < .08)
        tag = style.beats_per_bar == 4 and r.rand() < .07
        fill = r.rand() < self.fills_often
        stop = r.rand() < .1
        for i in range(bars):
            last = i == bars - 1
            beats = 2 if last and tag else style.beats_per_bar
            self.song.bars.append(Bar(beat, beats, i == 0))
            self.bar(beat, beats, i, section, players, fill and last and drums, stop and last)
            beat += beats
        if r.rand() < .03:
            self.song.pauses.append((beat, r.uniform(.3, 2.5)))
        return beat

    def chord(self, section, bar, step):
        """Root 0 to 11 and third of what sounds at a step."""
        at = int((bar + step / self.steps) / section.bars_a_chord + 1e-9)
        degree = section.round[at % len(section.round)]
        root = self.key + self.scale[degree]
        third = (self.scale[(degree + 2) % 7] - self.scale[degree]) % 12
        return root % 12, 3 if third == 3 else 4

    def bar(self, beat, beats, i, section, players, fill, stop):
        end = beats * self.style.steps
        if stop or (players['breaks'] and i % 2 == 1):
            end = min(end, 1)
        if players['drums']:
            self.drums(beat, end, i, section, fill)
        if players['bass']:
            for step, interval in section.bass[i % 2]:
                if step < end:
                    root, third = self.chord(section, i, step)
                    self.add(beat + step / self.style.steps, self.r.choice([.4, .9]), 28 + (root - 4) % 12 + (third if interval == 4 else interval),
                             self.r.uniform(.75, 1) * section.level, BASS)
        if self.song.distorted and players['comp']:
            self.guitar(beat, end, i, section)
        if self.plays_comp and players['comp']:
            self.chords(beat, end, i, section)
        if self.plays_pad and end > 1:
            root, third = self.chord(section, i, 0)
            for pitch in (root, root + third, root + 7):
                self.add(beat, beats * .98, 54 + (pitch - 6) % 12, .5, PAD)
        if players['tune'] and end > 1:
            self.tune(beat, end, i, section)

    def drums(self, beat, end, i, section, fill):
        r, per = self.r, self.style.steps
        fill_from = max(0, end - per * int(r.choice([1, 1, 2, 4]))) if fill else end
        for drum, row in section.groove.items():
            for step in range(end):
                sign = row[(i * self.steps + step) % len(row)]
                if sign == '.' or (sign == '?' and r.rand() < .5) or (step >= fill_from and drum != KICK):
                    continue
                if sign == 'g' and r.rand() < .15:
                    continue
                self.add(beat + step / per, .2, drum, LOUDNESS[sign] * r.uniform(.85, 1) * section.level, DRUMS)
        toms = (SNARE, SNARE, HIGH_TOM, MID_TOM, LOW_TOM)
        pace = int(r.choice([1, 1, 2])) if per == 4 else 1
        for step in range(fill_from, end, pace):
            if r.rand() < .88:
                share = (step - fill_from) / max(1, end - fill_from)
                self.add(beat + step / per, .2, toms[int(5 * share)] if r.rand() < .7 else SNARE, r.uniform(.6, 1) * (.7 + .3 * share), DRUMS)
        if (i == 0 and r.rand() < self.crashes_often and section.groove) or (section.groove and r.rand() < .02):
            self.add(beat, 1, CRASH, 1., DRUMS)
            self.add(beat, .2, KICK, 1., DRUMS)

    def guitar(self, beat, end, i, section):
        for step, length, muted, interval in section.riffs[i % 2]:
            if step < end:
                root, _ = self.chord(section, i, step)
                self.add(beat + step / self.style.steps, min(length, max(1, end - step)) / self.style.steps * .95,
                         40 + (root - 4) % 12 + (0 if muted else interval), .55 if muted else 1., MUTED if muted else RIFF)

    def chords(self, beat, end, i, section):
        r, per = self.r, self.style.steps
        if section.comp is None:
            shape = (0, 7, 12, -1, 12, 7) if section.round[0] % 2 else (0, 7, 12, -1)
            for j, step in enumerate(range(0, end, max(1, per // 2) if per != 3 else 1)):
                root, third = self.chord(section, i, step)
                tone = shape[j % len(shape)]
                self.add(beat + step / per, .8, 48 + root + (12 + third if tone < 0 else tone), r.uniform(.5, .85), COMP)
            return
        for step in section.comp:
            if step >= end:
                continue
            root, third = self.chord(section, i, min(step + 2, self.steps - 1) if section.pushes else step)
            length = .4 if len(section.comp) > 1 else self.style.beats_per_bar * .9
            velocity = r.uniform(.55, .85) * (1. if step % per == 0 else r.choice([.8, 1.]))
            for pitch in (0, third, 7, 12):
                self.add(beat + step / per, length, 50 + (root - 2) % 12 + pitch - (12 if root > 6 else 0), velocity, COMP)

    def tune(self, beat, end, i, section):
        """A motif a bar, in pairs that come back: question, answer, question, another answer."""
        name = (0, 1, 0, 2)[i % 4] if self.r.rand() < .9 else 3
        rows = section.motifs.setdefault(name, band.motif(self.r, self.steps, self.style.steps))
        rows = [x for x in rows if x[0] < end]
        voice = self.plays_voice and (not self.plays_lead or (i // 8) % 2 == 0)
        for j, (step, luck) in enumerate(rows):
            root, third = self.chord(section, i, step)
            pitch = 60 + (self.key + self.scale[int(luck * 13) % 7]) % 12 if luck > .45 else 60 + (root + (0, third, 7)[int(luck * 6.6) % 3]) % 12
            gap = ((rows[j + 1][0] if j + 1 < len(rows) else end) - step) / self.style.steps
            if voice:
                self.add(beat + step / self.style.steps, min(gap, 2) * .92, pitch - 7, self.r.uniform(.6, 1), VOICE)
            elif self.plays_lead:
                self.add(beat + step / self.style.steps, gap * .9, pitch + 7, self.r.uniform(.65, 1), LEAD)


def write_song(r, styles, seconds):
    """A random song of one of the styles, by their shares."""
    shares = np.array([s.share for s in styles])
    style = styles[r.choice(len(styles), p=shares / shares.sum())]
    return Writer(r, style, seconds).write()
