"""rehearsals.py FOLDER [--only NAME]: makes takes of an instructor who calls over a demo song, with known truth.

FOLDER/dev/NAME, FOLDER/new/NAME (speakers that nothing was trained on), FOLDER/final/NAME and FOLDER/fresh/NAME each hold
music.wav, take.wav (what the microphone gave: calls, room, bleed of the music, noise, breaths), cal.wav (8 clicks at 1.0, 1.5 ...
s played into the microphone), script.csv (what should be called when: it is a plan for "cuelead review --plan") and truth.csv
(what was called when, in seconds of the take). The final half has another song, other rooms and speakers; the fresh half has
speakers that nothing was trained or chosen on."""
import argparse
import csv
import json
from pathlib import Path

import numpy as np
from scipy.io import wavfile

import room
import speech

RATE = 44_100
FILLERS = ["okay", "good", "now", "nice", "ready", "listen"]
# half, name, speaker, speed, song, bleed dB, noise dB, tail s, wet dB, rushing ms, microphone's clock ppm, error ms
TAKES = [
    ("dev", "d1", "flite:rms", 1.0, "lamp-on-the-quay", -25, -45, 0.25, -12, 0, 0, 22),
    ("dev", "d2", "espeak:en-us+f3", 1.0, "lamp-on-the-quay", -18, -35, 0.3, -9, 0, 0, 22),
    ("dev", "d3", "flite:awb", 1.15, "slack-water-waltz", -30, -30, 0.2, -14, -60, 20, 22),
    ("dev", "d4", "espeak:en-gb-x-rp+m3", 0.9, "slack-water-waltz", -22, -40, 0.45, -5, 40, 0, 25),
    ("dev", "d5", "flite:kal16", 1.0, "lamp-on-the-quay", -15, -28, 0.35, -8, 0, -30, 22),
    ("dev", "d6", "espeak:en-us+Annie", 1.1, "lamp-on-the-quay", -35, -25, 0.25, -10, 0, 0, 22),
    ("new", "n1", "espeak:en-us+anika", 1.0, "lamp-on-the-quay", -25, -40, 0.3, -9, 0, 0, 22),
    ("new", "n2", "espeak:en-gb-x-rp+sandro", 1.0, "slack-water-waltz", -20, -35, 0.25, -10, 0, 0, 22),
    ("new", "n3", "espeak:en-us+Jacky", 1.1, "lamp-on-the-quay", -30, -28, 0.35, -8, -40, 0, 22),
    ("new", "n4", "espeak:en-029+victor", 0.95, "slack-water-waltz", -18, -40, 0.3, -7, 0, 20, 22),
    ("new", "n5", "espeak:en-us+pablo", 1.0, "lamp-on-the-quay", -25, -30, 0.25, -11, 0, 0, 22),
    ("final", "f1", "flite:slt", 1.0, "rope-walk-ramble", -25, -45, 0.25, -12, 0, 0, 22),
    ("final", "f2", "espeak:en-gb-x-gbclan+f5", 1.0, "rope-walk-ramble", -18, -35, 0.3, -9, 0, 0, 22),
    ("final", "f3", "flite:slt", 1.15, "rope-walk-ramble", -20, -28, 0.4, -6, -50, 25, 22),
    ("final", "f4", "espeak:en-us+shelby", 0.9, "rope-walk-ramble", -30, -30, 0.2, -14, 40, 0, 25),
    ("final", "f5", "espeak:en-gb-x-gbclan+Lee", 1.0, "rope-walk-ramble", -15, -40, 0.35, -8, 0, -30, 22),
    ("final", "f6", "espeak:en-gb-x-rp+steph3", 1.1, "rope-walk-ramble", -35, -25, 0.3, -10, 0, 0, 22),
    ("fresh", "h1", "flite:slt@210", 0.95, "slack-water-waltz", -22, -36, 0.3, -9, 30, 0, 24),
    ("fresh", "h2", "espeak:en-us+Andrea@60", 1.0, "rope-walk-ramble", -20, -32, 0.35, -8, 0, 15, 22),
    ("fresh", "h3", "espeak:en-gb-x-gbclan+Zac@40", 1.05, "lamp-on-the-quay", -28, -30, 0.25, -11, -40, 0, 22),
    ("fresh", "h4", "espeak:en-us+travis", 0.95, "rope-walk-ramble", -16, -38, 0.3, -7, 0, -25, 22),
    ("fresh", "h5", "flite:slt@170", 1.1, "lamp-on-the-quay", -30, -26, 0.4, -6, 0, 0, 22),
    ("fresh", "h6", "espeak:en-029+Hugo@55", 1.0, "slack-water-waltz", -24, -34, 0.2, -13, -30, 20, 25),
    ("fresh", "h7", "espeak:en-us-nyc+marcelo", 1.0, "rope-walk-ramble", -18, -30, 0.3, -9, 50, 0, 22),
    ("fresh", "h8", "espeak:en+edward2@45", 1.1, "lamp-on-the-quay", -26, -28, 0.35, -8, 0, 0, 22),
]
SECONDS = 75
LATE_OR_EARLY_MS = 60


def beats(song):
    rows = [line.split("\t") for line in open(room.HOME / "demo-songs" / (song + ".beats")) if line[0].isdigit()]
    return np.array([float(row[0]) for row in rows])


def script(song, calls, random):
    """A dance of two walls: the same words again, a call for nearly every second beat, its target before the beat."""
    times = beats(song)
    times = times[(times > 4) & (times < SECONDS - 1.5)]
    walls = len(times) // 2
    words, rows = {}, []
    i = 0
    while i < 2 * walls - 2:
        place = i % walls
        if place not in words:
            words[place] = str(random.choice(calls))
        lead = times[i + 1] - times[i]
        if not rows or times[i] - rows[-1][1] > 0.8:
            rows.append((words[place], times[i], times[i] + lead))
        i += 2 if random.random() < 0.75 else 3
    return rows


def call(kind_of, random):
    draw = random.random()
    for kind, part in (("missed", 0.06), ("wrong", 0.05), ("early", 0.06), ("late", 0.08)):
        if draw < part:
            return kind
        draw -= part
    return "ok"


def make(folder, calls, speakers, spec):
    half, name, who, speed, song, bleed_db, noise_db, tail, wet_db, rushing_ms, ppm, error_ms = spec
    random = speech.rng("take", name)
    latency = random.uniform(0.03, 0.22)
    rows = script(song, calls, random)
    music = room.song(song, RATE)[:SECONDS * RATE]
    music = music / np.std(music) * 0.1
    voice, others = np.zeros(len(music) + RATE), np.zeros(len(music) + RATE)
    truth, last = [], 0.0

    def say(text, centre):
        """Puts a word so that its centre sounds then (before the round trip); its times, or None where there is no room."""
        nonlocal last
        samples, rate, _, spans = speakers.say(who, speed, text)
        onset, end, _, vowel, _, own = speech.centred(samples, rate, text, spans)
        start = centre - own
        if start + onset < last + 0.06:
            return None
        samples = room.resampled(samples, rate, RATE)
        room.add(voice, samples / room.sounding_rms(samples) * 10 ** (random.uniform(-4, 4) / 20), round(start * RATE))
        last = start + end
        return [start + t for t in (onset, vowel, own, end)]

    for idx, (word, target, _) in enumerate(rows):
        kind = call(word, random)
        if kind == "missed":
            truth.append(["missed", idx, word])
            continue
        error = np.clip(random.normal(0, error_ms), -50, 50)
        if kind in ("early", "late"):
            error = random.uniform(90, 300) * (-1 if kind == "early" else 1)
        error += rushing_ms * (target / SECONDS - 0.5)
        said = word
        while kind == "wrong" and said == word:
            said = str(random.choice(calls))
        times = say(said, target + error / 1000)
        if times is None:
            truth.append(["missed", idx, word])
            continue
        if kind != "wrong":
            kind = "ok" if abs(error) <= LATE_OR_EARLY_MS else "early" if error < 0 else "late"
        truth.append([kind, idx, said, *times, error])
        if random.random() < 0.4:
            x = room.breath(RATE, random)
            room.add(others, x * 10 ** (-random.uniform(14, 32) / 20), int((times[0] - random.uniform(0.1, 0.4)) * RATE) - len(x))
        if random.random() < 0.1:
            room.add(others, room.smack(RATE, random) * random.uniform(0.1, 0.6), int((times[0] - random.uniform(0.1, 0.3)) * RATE))
        following = rows[idx + 1][1] if idx + 1 < len(rows) else SECONDS
        if random.random() < 0.06 and following - last > 1.1:
            text = str(random.choice(FILLERS if random.random() < 0.7 else calls))
            times = say(text, last + random.uniform(0.3, 0.4))
            if times:
                truth.append(["extra", "", text, *times])
    loudest = 1 / np.sqrt(10)     # of the voice, so that nothing clips
    sound = room.coloured(voice + others, RATE, random, 4)
    sound = room.reverberant(sound, room.impulse(RATE, random, tail, wet_db))
    bleed = np.concatenate([music, np.zeros(RATE)])
    bleed = room.reverberant(room.coloured(bleed, RATE, random), room.impulse(RATE, random, tail, wet_db + 8))
    take = sound + bleed / np.std(bleed) * 10 ** (bleed_db / 20) + room.noise(len(sound), RATE, random) * 10 ** (noise_db / 20)
    take = np.concatenate([np.zeros(round(latency * RATE)), take])
    drift = 1 + ppm * 1e-6
    if ppm:
        take = np.interp(np.arange(int(len(take) / drift)) * drift, np.arange(len(take)), take)
    take *= loudest * 10 ** (random.uniform(-14, 0) / 20) / (np.abs(take).max() + 1e-9) * 2.5
    where = folder / half / name
    where.mkdir(parents=True, exist_ok=True)
    write(where / "music.wav", music)
    write(where / "take.wav", take)
    write(where / "cal.wav", clicks(latency, random))
    with open(where / "script.csv", "w", newline="") as out:
        table = csv.writer(out)
        table.writerow(["idx", "word", "time", "beat"])
        table.writerows([i, word, "%.6f" % time, "%.6f" % beat] for i, (word, time, beat) in enumerate(rows))
    with open(where / "truth.csv", "w", newline="") as out:
        table = csv.writer(out)
        table.writerow("kind,idx,word,onset,vowel,pc,end,err_ms".split(","))
        for row in truth:
            times = ["%.5f" % ((t + round(latency * RATE) / RATE) / drift) for t in row[3:7]]
            error = ["%.1f" % row[7]] if len(row) > 7 else [""]
            table.writerow(row[:3] + (times or [""] * 4) + error)
    (where / "meta.json").write_text(json.dumps(dict(
        speaker=who, speed=speed, song=song, bleed_db=bleed_db, noise_db=noise_db, latency_ms=1000 * latency, ppm=ppm,
        rushing_ms=rushing_ms)))


def clicks(latency, random):
    x = np.zeros(6 * RATE)
    n = int(0.004 * RATE)
    shape = np.exp(-np.arange(n) / (0.0008 * RATE)) * np.cos(2 * np.pi * 2500 * np.arange(n) / RATE)
    for i in range(8):
        room.add(x, shape * 0.5, round((1 + 0.5 * i + latency) * RATE))
    x = room.reverberant(x, room.impulse(RATE, random, 0.2, -12))
    return x + room.noise(len(x), RATE, random) * 0.0008


def write(path, x):
    wavfile.write(path, RATE, np.round(np.clip(x, -1, 1) * 32767).astype(np.int16))


def main():
    arguments = argparse.ArgumentParser()
    arguments.add_argument("folder", type=Path)
    arguments.add_argument("--only", default="")
    given = arguments.parse_args()
    calls = [line.strip() for line in open(Path(__file__).parent.parent / "words" / "words.txt") if line.strip()]
    speakers = speech.Speakers()
    for spec in TAKES:
        if spec[1].startswith(given.only):
            make(given.folder, calls, speakers, spec)


if __name__ == "__main__":
    main()
