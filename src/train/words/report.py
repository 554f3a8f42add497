"""report.py WORDS FOLDER VOICE...: a table of call-words, as each voice says them in FOLDER/VOICE/word.wav (16 kHz mono).

A recogniser that knows these words and no others hears each of them some times, under white noise 30 dB below it. It is an
instrument, not a listener: compare its figures with each other only, and take less than four points in a hundred for chance.
"""
import collections
import os
import sys
import tempfile
import wave

import numpy as np
from pocketsphinx import Decoder

MODEL = "/usr/share/pocketsphinx/model/en-us/"
RATE = 16_000
NOISE_DB = -30
TIMES = 6
SILENCE_SECONDS = 0.2


def read(path):
    with wave.open(path) as file:
        assert file.getframerate() == RATE and file.getnchannels() == 1, path
        return np.frombuffer(file.readframes(file.getnframes()), "<i2") / 32768


def biquad(samples, b, a):
    out = np.zeros(len(samples))
    x1 = x2 = y1 = y2 = 0.0
    for i, x in enumerate(samples):
        y = b[0] * x + b[1] * x1 + b[2] * x2 - a[0] * y1 - a[1] * y2
        x2, x1, y2, y1 = x1, x, y1, y
        out[i] = y
    return out


def loudness(samples):
    """K-weighted, ungated (ITU-R BS.1770-4), in LUFS."""
    k = np.tan(np.pi * 1681.974450955533 / RATE)
    high, q = 10 ** (3.999843853973347 / 20), 0.7071752369554196
    band = high**0.4996667741545416
    a0 = 1 + k / q + k * k
    shelf_b = np.array([high + band * k / q + k * k, 2 * (k * k - high), high - band * k / q + k * k]) / a0
    shelf_a = [2 * (k * k - 1) / a0, (1 - k / q + k * k) / a0]
    k, q = np.tan(np.pi * 38.13547087602444 / RATE), 0.5003270373238773
    a0 = 1 + k / q + k * k
    weighted = biquad(biquad(samples, shelf_b, shelf_a), [1, -2, 1], [2 * (k * k - 1) / a0, (1 - k / q + k * k) / a0])
    return -0.691 + 10 * np.log10(np.mean(weighted**2) + 1e-14)


def recogniser(words):
    with tempfile.NamedTemporaryFile("w", suffix=".jsgf", delete=False) as grammar:
        grammar.write("#JSGF V1.0;\ngrammar calls;\npublic <call> = %s ;\n" % " | ".join(words))
    config = Decoder.default_config()
    for option, value in (("-hmm", MODEL + "en-us"), ("-dict", MODEL + "cmudict-en-us.dict"),
                          ("-jsgf", grammar.name), ("-cmn", "batch"), ("-logfn", os.devnull)):
        config.set_string(option, value)
    decoder = Decoder(config)
    os.unlink(grammar.name)
    return decoder


def heard(decoder, samples):
    decoder.start_utt()
    decoder.process_raw((samples * 32767).astype("<i2").tobytes(), False, True)
    decoder.end_utt()
    hypothesis = decoder.hyp()
    return hypothesis.hypstr.strip() if hypothesis and hypothesis.hypstr else "nothing"


def noisy(samples, seed):
    loud = np.abs(samples) > 0.02 * np.abs(samples).max()
    level = np.sqrt(np.mean(samples[loud] ** 2))
    padded = np.pad(samples, int(SILENCE_SECONDS * RATE))
    noise = np.random.default_rng(seed).normal(0, level * 10 ** (NOISE_DB / 20), len(padded))
    mixed = padded + noise
    return 0.5 * mixed / np.abs(mixed).max()


def row(decoder, folder, word):
    samples = read(os.path.join(folder, word.replace(" ", "_") + ".wav"))
    answers = [heard(decoder, noisy(samples, seed)) for seed in range(TIMES)]
    wrong = collections.Counter(answer for answer in answers if answer != word)
    return len(samples) / RATE, loudness(samples), answers.count(word), wrong


def table(decoder, folder, voice, words):
    rows = [(word, *row(decoder, folder, word)) for word in words]
    right = sum(row[3] for row in rows)
    loud = [row[2] for row in rows]
    print("\n## %s\n" % voice)
    print("%.1f %% of %d hearings are right; words take %.2f s in the mean; their loudness is %.1f to %.1f LUFS.\n" % (
        100 * right / (TIMES * len(rows)), TIMES * len(rows), np.mean([row[1] for row in rows]), min(loud), max(loud)))
    print("| word | seconds | LUFS | right of %d | heard as |\n|---|---|---|---|---|" % TIMES)
    for word, seconds, lufs, count, wrong in sorted(rows, key=lambda row: (row[3], row[0])):
        others = ", ".join(other if times == 1 else "%s (%d)" % (other, times) for other, times in wrong.most_common())
        print("| %s | %.2f | %.1f | %d | %s |" % (word, seconds, lufs, count, others))


def main():
    words = [line.strip() for line in open(sys.argv[1]) if line.strip()]
    print("# How well call-words are understood\n")
    print("Written by `src/train/words/report.sh`; do not edit. A speech recogniser that knows these %d words and no"
          % len(words))
    print("others hears each of them %d times under white noise %d dB below it. It is an instrument, not a listener: compare"
          % (TIMES, -NOISE_DB))
    print("its figures with each other only. The words that are understood worst come first.")
    decoder = recogniser(words)
    for voice in sys.argv[3:]:
        table(decoder, os.path.join(sys.argv[2], voice), voice, words)


main()
