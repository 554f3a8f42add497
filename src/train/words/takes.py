"""Makes takes of call-words as a microphone in a room would give them, with the true times of their sounds.

  takes.py WORDS FOLDER [--part N] [--seed TEXT]    WORDS: a text file, one word or phrase a line; --part 4: every
                                                    fourth condition; --seed: other breaths, smacks, echoes and noise

The words are spoken by espeak-ng (its library tells when each sound begins) and flite (-psdur), by several voices and at
several rates, so their times are known. FOLDER/CONDITION/word.wav are the takes; FOLDER/truth.csv has, in seconds of
each take, onset and end of what can be heard; onset, vowel and end of the stressed syllable, and its perceptual centre:
onset + 0.65 (vowel - onset) + 0.25 (end - vowel) (Marcus 1981). Onset and end of the word are measured on the clean word:
the first and last sample whose 2 ms RMS exceeds the loudest 20 ms RMS less 40 dB.

What a room adds (chosen to be like a laptop's microphone in a kitchen, from memory): hiss and fan noise, mains hum, a
short reverberation, breaths before and behind the word, smacks of the lips, a thump of the key, popped plosives.
"""
import argparse
import csv
import ctypes
import subprocess
import tempfile
import zlib
from pathlib import Path

import numpy as np
from scipy.io import wavfile
from scipy.signal import butter, fftconvolve, sosfilt, sosfiltfilt

ESPEAK = [("en-us", ""), ("en-us", "+f3"), ("en-gb-x-rp", "+m3"), ("en-gb-scotland", "+f2")]
FLITE = ["kal16", "slt", "rms", "awb"]
SPEEDS = [0.8, 1.0, 1.3]
NOISES_DB = [45, 25, 15]
VOWELS = set("aa ae ah ao aw ax axr ay eh er ey ih ix iy ow oy uh uw".split())
LATE = {"about", "across", "again", "ahead", "along", "apart", "around", "away", "before", "behind", "beside",
        "prepare", "recover", "relax", "repeat", "reverse", "together", "unwind"}


class Event(ctypes.Structure):
    _fields_ = [("type", ctypes.c_int), ("id", ctypes.c_uint), ("text", ctypes.c_int), ("length", ctypes.c_int),
                ("millis", ctypes.c_int), ("sample", ctypes.c_int), ("user", ctypes.c_void_p),
                ("name", ctypes.c_char * 8)]


class Espeak:
    """The library of espeak-ng, with its events of sounds (in IPA)."""

    def __init__(self):
        self.library = ctypes.CDLL("libespeak-ng.so.1")
        self.rate = self.library.espeak_Initialize(2, 0, None, 3)
        kind = ctypes.CFUNCTYPE(ctypes.c_int, ctypes.POINTER(ctypes.c_short), ctypes.c_int, ctypes.POINTER(Event))
        self.callback = kind(self.heard)
        self.library.espeak_SetSynthCallback(self.callback)

    def heard(self, samples, count, events):
        if count:
            self.samples.extend(samples[:count])
        i = 0
        while events[i].type != 0:
            if events[i].type == 7:
                self.sounds.append((bytes(events[i].name).split(b"\0")[0].decode("utf8", "replace"),
                                    events[i].sample / self.rate))
            i += 1
        return 0

    def say(self, voice, speed, words, pitch=50):
        """pitch: 0 to 99, as the library has it."""
        self.samples, self.sounds = [], []
        language, variant = voice
        if self.library.espeak_SetVoiceByName((language + variant).encode()) != 0:
            raise SystemExit("espeak-ng has no voice " + language + variant)
        self.library.espeak_SetParameter(1, int(165 * speed), 0)
        self.library.espeak_SetParameter(3, int(pitch), 0)
        text = words.encode()
        self.library.espeak_Synth(text, len(text) + 1, 0, 1, 0, 1, None, None)
        self.library.espeak_Synchronize()
        starts = [s for _, s in self.sounds] + [len(self.samples) / self.rate]
        sounds = [(name, start, starts[i + 1]) for i, (name, start) in enumerate(self.sounds) if name]
        return np.array(self.samples) / 32768, self.rate, [(is_vowel(n), a, b) for n, a, b in sounds]


def is_vowel(ipa):
    return any(letter in "aeiouæɐɑɒɔəɚɛɜɝɨɪʉʊʌᵻy" for letter in ipa)


def flite(voice, speed, words, with_names=False, settings=()):
    """settings: further ones of the program, such as int_f0_target_mean=120."""
    with tempfile.TemporaryDirectory() as folder:
        out = folder + "/x.wav"
        told = subprocess.run(["flite", "-voice", voice, "--setf", "duration_stretch=%.3f" % (1 / speed), "-psdur",
                               *(part for setting in settings for part in ("--setf", setting)),
                               "-t", words, "-o", out], capture_output=True, text=True, check=True).stdout
        rate, samples = wavfile.read(out)
    sounds, names, start = [], [], 0.0
    for item in told.split():
        name, end = item.split(":")
        if name != "pau":
            sounds.append((name in VOWELS, start, float(end)))
            names.append(name)
        start = float(end)
    x = samples / 32768
    # its pauses hum: silence them, as they would count as noise of the room that is not the one wanted
    first, last = int((sounds[0][1] - 0.01) * rate), int((sounds[-1][2] + 0.04) * rate)
    gain = np.zeros(len(x))
    gain[max(0, first):last] = 1
    x = x * sosfiltfilt(butter(1, 60, fs=rate, output="sos"), gain).clip(0, 1) * (gain > 0)
    return (x, rate, sounds, names) if with_names else (x, rate, sounds)


def rms(x, n):
    total = np.concatenate([[0], np.cumsum(x * x)])
    i = np.arange(len(x))
    a, b = np.maximum(i - n // 2, 0), np.minimum(i - n // 2 + n, len(x))
    return np.sqrt((total[b] - total[a]) / n)


def audible(x, rate):
    level = rms(x, max(2, int(0.002 * rate)))
    loud = np.where(level > rms(x, int(0.02 * rate)).max() * 0.01)[0]
    n = int(0.001 * rate)
    return (loud[0] + n) / rate, (loud[-1] - n) / rate


def centre(words, sounds, onset, end):
    vowels = [i for i, sound in enumerate(sounds) if sound[0]]
    which = 1 if words.split()[0] in LATE and len(vowels) > 1 else 0
    v = vowels[which]
    start = onset if which == 0 else sounds[vowels[which - 1]][2]
    stop = end
    if which + 1 < len(vowels):
        last = vowels[which + 1] - 1
        stop = sounds[last][1] if last > v else sounds[v][2]
    vowel = max(sounds[v][1], onset)
    stop = max(stop, vowel)
    return start, vowel, stop, start + 0.65 * (vowel - start) + 0.25 * (stop - vowel)


def pink(n, rate, random):
    spectrum = np.fft.rfft(random.standard_normal(n))
    hz = np.maximum(np.fft.rfftfreq(n, 1 / rate), 20)
    return np.fft.irfft(spectrum * hz ** -0.4, n)


def breath(rate, random):
    n = int(random.uniform(0.2, 0.45) * rate)
    x = sosfilt(butter(2, [random.uniform(300, 700), random.uniform(2500, 5000)], "band", fs=rate, output="sos"),
                random.standard_normal(n))
    return x / rms(x, n // 2).max() * np.sin(np.pi * np.linspace(0, 1, n) ** random.uniform(0.7, 1.5))


def add(take, x, at):
    at = max(0, at)
    n = min(len(x), len(take) - at)
    if n > 0:
        take[at:at + n] += x[:n]


def room(word, rate, sounds, noise_db, random):
    """The word in a room, and how much later it is there."""
    lead, tail = random.uniform(0.5, 1.2), random.uniform(0.5, 1.0)
    at = int(lead * rate)
    take = np.zeros(at + len(word) + int(tail * rate))
    onset, end = audible(word, rate)
    loud = np.sqrt(np.mean(word[int(onset * rate):int(end * rate)] ** 2))
    add(take, word, at)
    if random.random() < 0.5:
        n = int(0.35 * rate)
        tail = random.standard_normal(n) * np.exp(-6.9 * np.arange(n) / rate / random.uniform(0.2, 0.4))
        tail[:int(0.004 * rate)] = 0
        take = take + fftconvolve(take, tail / np.linalg.norm(tail))[:len(take)] * 10 ** (-random.uniform(6, 12) / 20)
    if random.random() < 0.6:
        x = breath(rate, random)
        add(take, x * loud * 10 ** (-random.uniform(14, 30) / 20),
            at + int(onset * rate) - len(x) - int(random.uniform(0.08, 0.4) * rate))
    if random.random() < 0.4:
        x = breath(rate, random)
        add(take, x * loud * 10 ** (-random.uniform(18, 30) / 20), at + int((end + random.uniform(0.2, 0.5)) * rate))
    if random.random() < 0.4:
        n = int(0.008 * rate)
        smack = random.standard_normal(n) * np.exp(-np.arange(n) / (0.002 * rate)) * loud * random.uniform(0.2, 1)
        add(take, smack, at + int((onset - random.uniform(0.1, 0.45)) * rate))
    if random.random() < 0.3:
        t = np.arange(int(0.12 * rate)) / rate
        add(take, np.sin(2 * np.pi * random.uniform(50, 120) * t) * np.exp(-t / 0.03) * loud * random.uniform(0.5, 3),
            int(random.uniform(0, 0.2) * rate))
    if random.random() < 0.3 and not sounds[0][0]:
        t = np.arange(int(0.08 * rate)) / rate
        add(take, np.sin(2 * np.pi * random.uniform(30, 80) * t) * np.exp(-t / 0.02) * loud * random.uniform(0.3, 1.5),
            at + int(onset * rate))
    noise = pink(len(take), rate, random)
    noise += random.uniform(0, 1) * np.std(noise) * np.sin(2 * np.pi * 50 * np.arange(len(take)) / rate)
    take += noise / np.std(noise) * loud * 10 ** (-noise_db / 20)
    return take, at / rate


def main():
    arguments = argparse.ArgumentParser()
    arguments.add_argument("words")
    arguments.add_argument("folder", type=Path)
    arguments.add_argument("--part", type=int, default=1)
    arguments.add_argument("--first", type=int, default=0)
    arguments.add_argument("--seed", default="", help="another room for each take")
    given = arguments.parse_args()
    words = [line.strip() for line in open(given.words) if line.strip()]
    espeak = Espeak()
    speakers = [(v[0] + v[1], lambda speed, w, v=v: espeak.say(v, speed, w)) for v in ESPEAK]
    speakers += [("flite-" + v, lambda speed, w, v=v: flite(v, speed, w)) for v in FLITE]
    conditions = [(name, say, speed, db) for name, say in speakers for speed in SPEEDS for db in NOISES_DB]
    given.folder.mkdir(parents=True, exist_ok=True)
    with open(given.folder / "truth.csv", "w", newline="") as out:
        table = csv.writer(out)
        table.writerow("condition,word,onset,end,syllable,vowel,syllable_end,centre".split(","))
        for name, say, speed, db in conditions[given.first::given.part]:
            condition = "%s_%d_%ddB" % (name.replace("+", "-"), round(100 * speed), db)
            (given.folder / condition).mkdir(exist_ok=True)
            for word in words:
                random = np.random.default_rng(zlib.crc32((given.seed + condition + word).encode()))
                clean, rate, sounds = say(speed, word)
                onset, end = audible(clean, rate)
                times = (onset, end) + centre(word, sounds, onset, end)
                take, later = room(clean, rate, sounds, db, random)
                peak = 10 ** (-random.uniform(1, 26) / 20)
                take = take / np.abs(take).max() * peak
                wavfile.write(given.folder / condition / (word.replace(" ", "_") + ".wav"), rate,
                              np.round(take * 32767).astype(np.int16))
                table.writerow([condition, word] + ["%.4f" % (t + later) for t in times])


if __name__ == "__main__":
    main()
