"""train.py FOLDER [--utterances N] [--minutes M]: makes speech whose sounds are known and trains the network on it;
FOLDER/ear.pt is the network, FOLDER/speech.npz what it was trained on. The speakers of speech.HELD_OUT are never in it."""
import argparse
import multiprocessing
import time
from pathlib import Path

import numpy as np
import torch

import room
import speech
from network import HOP, RATE, Ear, feature

LANGUAGES = ["en-us", "en-us", "en", "en-gb-scotland", "en-gb-x-rp", "en-029", "en-gb-x-gbcwmd", "en-us-nyc"]
VARIANTS = ["", "f1", "f2", "f3", "f4", "f5", "m1", "m2", "m3", "m4", "m5", "m6", "m7", "m8", "Andy", "Annie", "Alicia",
            "belinda", "linda", "michael", "paul", "john", "rob", "max", "adam", "klatt2", "steph", "ed", "aunty", "Alex",
            "antonio", "benjamin", "boris", "caleb", "david", "Denis", "Diogo", "edward", "Gene", "Gene2", "Gustave",
            "Henrique", "iven", "iven2", "iven3", "iven4", "kaukovalta", "Marco", "Mario", "michel", "Miguel", "Mike", "Mr",
            "Nguyen", "pedro", "RicishayMax", "RicishayMax2", "RicishayMax3", "robert", "steph2", "Storm", "norbert",
            "AnxiousAndy", "grandpa", "grandma", "klatt", "klatt3", "klatt4", "klatt5", "klatt6", "croak"]
FLITE = {"kal16": 95, "rms": 95, "awb": 125, "kal": 95}    # and the pitch that each has, Hz
SONGS = ["lamp-on-the-quay", "slack-water-waltz"]
SECONDS = 12
PART = 24    # rows that are made at a time


def speaker(random):
    if random.random() < 0.45:
        voice = str(random.choice(list(FLITE)))
        return "flite:%s@%d" % (voice, 10 * round(FLITE[voice] * random.uniform(0.75, 2) / 10))
    return "espeak:%s+%s@%d" % (random.choice(LANGUAGES), random.choice(VARIANTS), random.integers(20, 85))


def utterance(speakers, calls, others, songs, random):
    """Words in a row in a room, at RATE, and the phone of each frame."""
    who, speed = speaker(random), random.choice([0.75, 0.85, 1.0, 1.15, 1.3])
    stretch = random.uniform(0.82, 1.24)     # another throat: formants and pitch moved
    x, labels = np.zeros(SECONDS * RATE), np.zeros(SECONDS * RATE // HOP + 1, int)
    events, at = np.zeros(len(x)), random.uniform(0.1, 0.8)
    while True:
        text = str(random.choice(calls if random.random() < 0.65 else others))
        samples, rate, phones, _ = speakers.say(who, speed, text)
        samples = room.resampled(samples, int(rate * stretch / 50) * 50, RATE)
        scale = rate / (int(rate * stretch / 50) * 50)
        if at + len(samples) / RATE > SECONDS - 0.1:
            break
        level = 10 ** (random.uniform(-5, 5) / 20) / (room.sounding_rms(samples) + 1e-9)
        room.add(x, samples * level, int(at * RATE))
        for name, start, end in phones:
            labels[int(np.ceil((at + start * scale) * RATE / HOP)):int(np.ceil((at + end * scale) * RATE / HOP))] = \
                speech.PHONES.index(name)
        if random.random() < 0.3:
            room.add(events, room.breath(RATE, random) * 10 ** (-random.uniform(12, 35) / 20),
                     int((at - random.uniform(0.3, 0.6)) * RATE))
        if random.random() < 0.15:
            room.add(events, room.smack(RATE, random) * random.uniform(0.1, 1), int((at - random.uniform(0.1, 0.4)) * RATE))
        at += len(samples) / RATE + random.exponential(0.35) * (1 if random.random() < 0.8 else 3)
    x = room.coloured(x + events, RATE, random)
    if random.random() < 0.7:
        x = room.reverberant(x, room.impulse(RATE, random, random.uniform(0.15, 0.5), -random.uniform(2, 18)))
    if random.random() < 0.75:
        music = songs[random.integers(len(songs))]
        start = random.integers(len(music) - len(x))
        music = room.coloured(music[start:start + len(x)], RATE, random)
        if random.random() < 0.6:
            music = room.reverberant(music, room.impulse(RATE, random, random.uniform(0.2, 0.5), random.uniform(-5, 10)))
        x = x + music / np.std(music) * 10 ** (-random.uniform(12, 45) / 20)
    x = x + room.noise(len(x), RATE, random) * 10 ** (-random.uniform(14, 55) / 20)
    return x, labels


def make(what):
    """Some rows of words: their features and phones, in a file."""
    seed, file = what
    here = Path(__file__).parent
    calls, others = [[line.strip() for line in open(path) if line.strip()]
                     for path in (here.parent / "words" / "words.txt", here / "other-words.txt")]
    random, speakers = speech.rng("train", seed), speech.Speakers()
    songs = [room.song(name, RATE) for name in SONGS]
    rows = [utterance(speakers, calls, others, songs, random) for _ in range(PART)]
    x = np.stack([feature(samples) for samples, _ in rows])
    np.savez(file, x=x.astype(np.float16), y=np.stack([labels for _, labels in rows]).astype(np.int8))


def main():
    arguments = argparse.ArgumentParser()
    arguments.add_argument("folder", type=Path)
    arguments.add_argument("--utterances", type=int, default=2400)
    arguments.add_argument("--minutes", type=float, default=60, help="of the processors' time")
    given = arguments.parse_args()
    given.folder.mkdir(parents=True, exist_ok=True)
    assert not set(speech.HELD_OUT) & {*VARIANTS, *FLITE, *(language.split("-")[-1] for language in LANGUAGES)}
    corpus = given.folder / "speech.npz"
    if not corpus.exists():
        files = [given.folder / ("part-%d.npz" % seed) for seed in range(given.utterances // PART)]
        with multiprocessing.Pool() as pool:
            pool.map(make, [(seed, file) for seed, file in enumerate(files) if not file.exists()], 1)
        parts = [np.load(file) for file in files]
        np.savez(corpus, x=np.concatenate([part["x"] for part in parts]), y=np.concatenate([part["y"] for part in parts]))
    data = np.load(corpus)
    x, y = torch.from_numpy(data["x"].astype(np.float32)), torch.from_numpy(data["y"].astype(np.int64))
    print("utterances and frames:", y.shape, "of them silent: %.2f" % (y == 0).float().mean(), flush=True)
    fit(x, y, given)


def varied(x):
    """By another microphone: as a whole up to 8 dB more or less, tilted and curved along the bands by up to 6 dB each way; and
    a few bands next to each other unheard (after Park and others 2019, "SpecAugment", Interspeech)."""
    bands = torch.linspace(-1, 1, x.shape[1])[None, :, None]
    level, tilt, curve = ((torch.rand(len(x), 1, 1) - 0.5) * most for most in (0.8, 0.6, 0.6))
    x = x + level + tilt * bands + curve * (bands ** 2 - 0.3)
    first, width = torch.randint(0, x.shape[1], (len(x), 1, 1)), torch.randint(0, 7, (len(x), 1, 1))
    band = torch.arange(x.shape[1])[None, :, None]
    return torch.where((band >= first) & (band < first + width), x.mean((1, 2), keepdim=True), x)


def fit(x, y, given):
    torch.manual_seed(1)
    torch.set_num_threads(1)    # more wait for each other most of the time
    kept = max(4, len(x) // 20)
    ear = Ear(len(speech.PHONES))
    saved = given.folder / "ear.pt"
    if saved.exists():
        ear.load_state_dict(torch.load(saved))
    steps, batch = 0, 8
    start, limit = time.process_time(), given.minutes * 60
    optimizer = torch.optim.AdamW(ear.parameters(), lr=2e-3, weight_decay=1e-3)
    while time.process_time() - start < limit:
        ear.train()
        for chosen in torch.randperm(len(x) - kept).split(batch):
            rate = max(0.02, 1 - (time.process_time() - start) / limit)
            for group in optimizer.param_groups:
                group["lr"] = 2e-3 * rate
            a, b = x[kept + chosen], y[kept + chosen]
            loss = torch.nn.functional.cross_entropy(ear(varied(a)), b, label_smoothing=0.02)
            optimizer.zero_grad()
            loss.backward()
            optimizer.step()
            steps += 1
        ear.eval()
        with torch.no_grad():
            right = (ear(x[:kept]).argmax(1) == y[:kept])
        print("%4.0f s, %d steps: loss %.3f, frames right %.3f, of speech %.3f" % (
            time.process_time() - start, steps, loss, right.float().mean(), right[y[:kept] > 0].float().mean()), flush=True)
        torch.save(ear.state_dict(), saved)


if __name__ == "__main__":
    main()
