"""The players: what bass, chords, riffs and tunes play in a bar. A player gets steps (n in a bar, some to a beat) and gives
rows of (step, ...); who the chord is, is the form's business."""
import numpy as np


def random_steps(r, steps, per_beat, on_beat, on_half, elsewhere):
    """Steps taken with these chances: on the beat, half-way (straight time only), elsewhere."""
    half = per_beat // 2 if per_beat % 2 == 0 else 0
    taken = []
    for i in range(steps):
        place = i % per_beat
        chance = on_beat if place == 0 else on_half if half and place == half else elsewhere
        if r.rand() < chance:
            taken.append(i)
    return taken or [0]


def bass_line(r, kind, steps, per_beat):
    """Rows of (step, semitones over the root; 4 = the chord's own third)."""
    beats = list(range(0, steps, per_beat))
    half = max(1, per_beat // 2)
    if kind == 'none':
        return []
    if kind == 'fifths':  # root and fifth in turn, on every or every other beat
        every = beats if len(beats) == 2 or r.rand() < .5 else beats[::2]
        return [(s, 0 if i % 2 == 0 else r.choice([7, -5])) for i, s in enumerate(every)]
    if kind == 'walk':
        return [(s, int(r.choice([0, 4, 7, 9, 12, 5])) if s else 0) for s in beats]
    if kind == 'eighths':
        return [(s, 0) for s in range(0, steps, half)]
    if kind == 'quarters':
        return [(s, int(r.choice([0, 0, 7])) if s else 0) for s in beats]
    if kind == 'triplets':
        return [(s, int(r.choice([0, 0, 7, 12]))) for s in range(0, steps, per_beat)] + [(s + per_beat - 1, 0) for s in beats if r.rand() < .5]
    if kind == 'shuffle':
        return [(s, [0, 0, 4, 4, 7, 7, 9, 9][i % 8]) for i, s in enumerate(x for x in range(steps) if x % 3 != 1)]
    if kind == 'arpeggio':
        return [(s, [0, 4, 7, 4][i % 4]) for i, s in enumerate(beats)]
    if kind == 'first' or kind == 'whole':
        return [(0, 0)]
    if kind == 'firstthird':
        return [(0, 0), (beats[-1], 7)]
    if kind == 'offbass':
        return [(s + half, 0) for s in beats]
    if kind == 'tumbao':
        rows = ([(0, 0), (6, 7), (12, 12)], [(6, 7), (12, 0)], [(0, 0), (6, 0), (8, 7), (14, 7)], [(0, 0), (3, 7), (8, 0), (11, 7)])
        return [x for x in rows[r.randint(len(rows))] if x[0] < steps]
    if kind == 'root':
        return [(0, 0)] + [(s, int(r.choice([0, 0, 7]))) for s in beats[1:] if r.rand() < .6] + [(s - half, 0) for s in beats[1:] if r.rand() < .2]
    return [(s, int(r.choice([0, 0, 0, 7, 12, 5]))) for s in random_steps(r, steps, per_beat, .7, .4, .15)]


def comp_steps(r, kind, steps, per_beat):
    """Steps at which chords are struck; None = broken chords."""
    beats = list(range(0, steps, per_beat))
    half = max(1, per_beat // 2)
    if kind == 'off':
        return [s + half for s in beats]
    if kind == 'off3':
        return [s + 2 for s in beats]
    if kind == 'chick':
        return beats[1::2]
    if kind == 'boomchick':
        return sorted(beats[1::2] + [s + half for s in beats])
    if kind == 'waltz':
        return beats[1:]
    if kind == 'quarters':
        return beats
    if kind == 'eighths':
        return list(range(0, steps, half)) if per_beat != 3 else list(range(steps))
    if kind == 'triplets':
        return list(range(steps))
    if kind == 'shuffle':
        return [s for s in range(steps) if s % 3 != 1]
    if kind == 'montuno':
        rows = ([0, 2, 5, 7, 9, 11, 13, 15], [0, 3, 4, 7, 8, 11, 12, 14], [0, 4, 6, 10, 12])
        return [s for s in rows[r.randint(len(rows))] if s < steps]
    if kind == 'whole':
        return [0]
    if kind == 'broken':
        return None
    return random_steps(r, steps, per_beat, .6, .45, .15)


def riff(r, steps, per_beat):
    """Rows of (step, length in steps, muted?, semitones over the root) for a distorted guitar."""
    kind = r.rand()
    if kind < .25:
        at = list(range(0, steps, max(1, per_beat // 2)))
    elif kind < .36:
        at = list(range(steps))
    elif kind < .46 and per_beat == 4:
        missing = r.choice([1, 3])
        at = [s for s in range(steps) if s % 4 != missing]
    elif kind < .6:
        at = [0] if r.rand() < .5 else [0, steps // 2]
    else:
        at = random_steps(r, steps, per_beat, .8, .55, .25)
    accents = {s for s in at if r.rand() < .3} | ({0} if r.rand() < .7 else set())
    mutes = r.rand() < .55
    ends = at[1:] + [steps]
    return [(s, e - s, mutes and s not in accents, int(r.choice([0, 0, 0, 3, 5, 1, 7])) if s in accents and s else 0) for s, e in zip(at, ends)]


def motif(r, steps, per_beat):
    """Rows of (step, number 0 to 1 that chooses the note) for a tune; busier or calmer by chance."""
    busy = r.uniform(.25, .8)
    return [(s, r.rand()) for s in random_steps(r, steps, per_beat, busy, busy * .9, busy * .4)]


def random_groove(r, style):
    """A groove of chance: kick rather on the beat, snare mostly a backbeat, some cymbal at an even pace."""
    from music import HAT, KICK, RIDE, SNARE, OPEN_HAT, CRASH
    steps, per = style.beats_per_bar * style.steps, style.steps
    kick = ['.'] * steps
    for s in random_steps(r, steps, per, .6, .3, .1):
        kick[s] = 'X'
    if r.rand() < .85:
        kick[0] = 'X'
    snare = ['.'] * steps
    backbeats = range(per, steps, 2 * per) if style.beats_per_bar != 3 else range(per, steps, per)
    for s in backbeats:
        snare[s] = 'X'
    for s in range(steps):
        if s % per and r.rand() < .08:
            snare[s] = 'g'
    pace = int(r.choice([1, max(1, per // 2), per]))
    start = int(r.choice([0, 0, 0, pace // 2]))
    cymbal = ''.join('x' if (s - start) % pace == 0 and s >= start else '.' for s in range(steps))
    return {KICK: ''.join(kick), SNARE: ''.join(snare), int(r.choice([HAT, HAT, RIDE, OPEN_HAT, CRASH])): cymbal}
