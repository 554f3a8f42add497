"""What a room and a laptop's microphone add to a voice. Levels in dB are against the voice's own RMS where it sounds."""
import subprocess
import sys
from pathlib import Path

import numpy as np
from scipy.signal import butter, fftconvolve, resample_poly, sosfilt

sys.path.append(str(Path(__file__).resolve().parent.parent / "words"))
import takes as words  # noqa: E402

HOME = Path(__file__).resolve().parents[3]


def song(name, rate):
    """A demo song as one channel."""
    raw = subprocess.run(["sox", str(HOME / "demo-songs" / (name + ".mp3")), "-c", "1", "-r", str(rate), "-t", "f32", "-"],
                         capture_output=True, check=True).stdout
    return np.frombuffer(raw, "<f4").astype(float)


def impulse(rate, random, seconds, wet_db):
    """An impulse response: the direct sound and a tail that dies 60 dB in so many seconds."""
    n = int(min(seconds, 0.5) * rate)
    tail = random.standard_normal(n) * np.exp(-6.9 * np.arange(n) / rate / seconds)
    tail[:int(random.uniform(0.002, 0.008) * rate)] = 0
    response = tail / np.linalg.norm(tail) * 10 ** (wet_db / 20)
    response[0] += 1
    return response


def coloured(x, rate, random, most_db=6):
    """Through a microphone that is not even: three broad bumps or dips."""
    for _ in range(3):
        hz = 10 ** random.uniform(np.log10(150), np.log10(min(6000, 0.4 * rate)))
        band = sosfilt(butter(1, [hz / 1.5, min(hz * 1.5, 0.48 * rate)], "band", fs=rate, output="sos"), x)
        x = x + band * (10 ** (random.uniform(-most_db, most_db) / 20) - 1)
    return x


def reverberant(x, response):
    return fftconvolve(x, response)[:len(x)]


def sounding_rms(x):
    return np.sqrt(np.mean(x[np.abs(x) > 0.02 * np.abs(x).max()] ** 2))


def resampled(x, rate, to):
    gcd = np.gcd(int(rate), int(to))
    return resample_poly(x, int(to) // gcd, int(rate) // gcd)


def breath(rate, random):
    return words.breath(rate, random)


def smack(rate, random):
    n = int(0.008 * rate)
    return random.standard_normal(n) * np.exp(-np.arange(n) / (0.002 * rate))


def noise(n, rate, random):
    """Hiss and fan, with some hum of the mains; RMS 1."""
    x = words.pink(n, rate, random)
    x += random.uniform(0, 1) * np.std(x) * np.sin(2 * np.pi * 50 * np.arange(n) / rate)
    return x / np.std(x)


add = words.add
