"""What happens between a band and a listener: hall, talk, microphones, loudness, cheap loudspeakers, coding."""
import os
import subprocess
import tempfile

import numpy as np
from scipy.fft import next_fast_len
from scipy.signal import butter, fftconvolve, lfilter

from feature import RATE
from instruments import singer
from performance import Played


def level(x):
    return x / (np.abs(x).max() + 1e-9)


def reverberant(r, x):
    """Echoes, then a tail of noise that dies away (Moorer 1979); darker with time."""
    n = int(r.uniform(.15, 1.8) * RATE)
    tail = r.randn(n) * np.exp(-np.arange(n) / n * 6.9)
    tail = lfilter([1 - r.uniform(0, .7)], [1, -.4], tail)
    for _ in range(r.randint(0, 6)):
        tail[r.randint(0, min(n, RATE // 12))] += r.uniform(2, 8)
    tail /= np.sqrt((tail ** 2).sum())
    return x + r.uniform(.05, .8) * fftconvolve(x, tail)[:len(x)]


def equalized(r, x):
    size = next_fast_len(len(x), True)
    spectrum = np.fft.rfft(x, size)
    octaves = np.log2(np.maximum(20, np.arange(len(spectrum)) * RATE / size) / 20)
    tilt = r.randn() * r.uniform(0, 2.5) * (octaves - 5)
    gain_db = np.interp(octaves, np.linspace(0, 9.2, 7), r.randn(7) * r.uniform(1, 7)) + tilt
    return np.fft.irfft(spectrum * 10 ** (gain_db / 20), size)[:len(x)]


def talked_over(r, x):
    """Somebody announces something: short tones through the singer's throat."""
    t, notes = r.uniform(0, 3), []
    while t < len(x) / RATE:
        for _ in range(r.randint(4, 20)):
            length = r.uniform(.08, .28)
            notes.append(Played(t, t + length, int(r.randint(45, 62)), r.uniform(.4, 1), 5))
            t += length * r.uniform(1, 1.4)
        t += r.uniform(.5, 8)
    talk = singer(r, [n for n in notes if n.end < len(x) / RATE], len(x))
    return x + talk / (talk.std() + 1e-9) * x.std() * r.uniform(.2, 1.2)


def pumped(r, x):
    envelope = np.sqrt(lfilter([1 - .9995], [1, -.9995], x ** 2)) + 1e-3
    return x / envelope ** r.uniform(.3, .9)


def noisy(r, x):
    """White to brown, sometimes hum."""
    size = next_fast_len(len(x), True)
    spectrum = np.fft.rfft(r.randn(size))
    z = np.fft.irfft(spectrum / np.maximum(1, np.arange(len(spectrum))) ** r.uniform(0, .7), size)[:len(x)]
    if r.rand() < .2:
        t = np.arange(len(x)) / RATE
        z = z / z.std() + sum(np.sin(2 * np.pi * 50 * k * t) for k in (1, 2, 3, 5)) * r.uniform(.2, .8)
    return x + z / z.std() * x.std() * 10 ** (-r.uniform(4, 35) / 20)


def faded(r, x):
    """The level wanders, jumps, or comes and goes at the ends."""
    seconds = len(x) / RATE
    knots = np.arange(0, seconds + 8, 8.)
    gain_db = np.interp(np.arange(len(x)) / RATE, knots, r.randn(len(knots)) * r.uniform(0, 4))
    if r.rand() < .3:
        gain_db[int(r.rand() * len(x)):] += r.uniform(-10, 6)
    y = x * 10 ** (gain_db / 20)
    if r.rand() < .4:
        n = int(r.uniform(2, 10) * RATE)
        y[-n:] *= np.linspace(1, 0, len(y[-n:])) ** r.uniform(.7, 2)
    return y


def gapped(r, x):
    """Short losses, as a bad connection has."""
    y = x.copy()
    for _ in range(r.randint(1, 4)):
        a = r.randint(0, len(x))
        y[a:a + int(r.uniform(.05, .6) * RATE)] *= r.uniform(0, .1)
    return y


def coded(r, x):
    """Through an MP3 of few bits; the coder's delay is undone."""
    with tempfile.TemporaryDirectory() as folder:
        mp3, back = (os.path.join(folder, n) for n in ('a.mp3', 'b.pcm'))
        # through a pipe: in a file the coder looks for a header first, and now and then takes samples for one
        raw = (np.clip(x, -1, 1) * 32000).astype('<i2').tobytes()
        subprocess.run(['lame', '--quiet', '-r', '-s', str(RATE / 1000), '--bitwidth', '16', '-m', 'm', '-b', str(r.choice([32, 48, 64])), '-', mp3], input=raw, check=True, stderr=subprocess.DEVNULL)
        subprocess.run(['lame', '--quiet', '--decode', '-t', mp3, back], check=True, stderr=subprocess.DEVNULL)
        y = np.fromfile(back, '<i2') / 32768.
    n = min(len(x), len(y))
    size = next_fast_len(2 * n, True)
    cross = np.fft.irfft(np.fft.rfft(y[:n], size) * np.conj(np.fft.rfft(x[:n], size)), size)
    y = y[int(np.argmax(cross[:4000])):]
    return np.pad(y, (0, max(0, len(x) - len(y))))[:len(x)]


def heard(r, x):
    """One way of hearing a band, by chance."""
    x = level(x)
    if r.rand() < .25:
        x = talked_over(r, x)
    if r.rand() < .5:
        x = reverberant(r, x)
    if r.rand() < .7:
        x = equalized(r, x)
    if r.rand() < .15:
        x = lfilter(*butter(2, [r.uniform(60, 300) / (RATE / 2), r.uniform(2200, 8000) / (RATE / 2)], 'band'), x)
    x = level(x)
    if r.rand() < .55:
        x = np.tanh(x * r.uniform(1.2, 8))
    if r.rand() < .25:
        x = pumped(r, x)
    if r.rand() < .45:
        x = faded(r, level(x))
    if r.rand() < .08:
        x = gapped(r, x)
    if r.rand() < .3:
        x = noisy(r, level(x))
    x = level(x) * r.uniform(.15, 1)
    return coded(r, x) if r.rand() < .1 else x
