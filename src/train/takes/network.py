"""The small network that hears sounds of speech: dilated convolutions along time over 40 mel bands, 100 frames a second
(after Waibel and others 1989, "Phoneme recognition using time-delay neural networks"). Java has the same feature and layers."""
import numpy as np
import torch

RATE = 16_000
WINDOW, HOP, SIZE, BANDS = 400, 160, 512, 40
LOW_HZ, HIGH_HZ = 100, 7_600
LOUD = 0.97          # the frame power that this part of the frames do not reach counts as 0 dB
OVER_QUIET = 10 ** 1.2  # or what is so much (12 dB) above the quiet fifth, where nobody speaks at all
FLOOR = 1e-6
CHANNELS = 96
LAYERS = [(5, 1), (3, 2), (3, 4), (3, 6), (3, 10)]   # taps, dilation


def mel(hz):
    return 2595 * np.log10(1 + hz / 700)


def filters():
    edges = 700 * (10 ** (np.linspace(mel(LOW_HZ), mel(HIGH_HZ), BANDS + 2) / 2595) - 1)
    hz = np.arange(SIZE // 2 + 1) * RATE / SIZE
    rise = (hz[None] - edges[:-2, None]) / (edges[1:-1] - edges[:-2])[:, None]
    fall = (edges[2:, None] - hz[None]) / (edges[2:] - edges[1:-1])[:, None]
    return np.maximum(0, np.minimum(rise, fall))


def feature(samples):
    """(bands, frames): frame i is centred on sample i * HOP."""
    x = np.concatenate([np.zeros(WINDOW // 2), samples, np.zeros(WINDOW // 2)])
    frames = 1 + (len(x) - WINDOW) // HOP
    cut = np.lib.stride_tricks.sliding_window_view(x, WINDOW)[::HOP][:frames]
    window = 0.5 - 0.5 * np.cos(2 * np.pi * np.arange(WINDOW) / WINDOW)
    power = np.abs(np.fft.rfft(cut * window, SIZE)) ** 2 @ filters().T
    total = np.sort(power.sum(1))
    loud = max(total[int(LOUD * (frames - 1))], OVER_QUIET * total[(frames - 1) // 5]) / BANDS + 1e-20
    return ((10 * np.log10(power / loud + FLOOR)) / 20 + 1.5).T.astype(np.float32)


class Ear(torch.nn.Module):
    def __init__(self, classes):
        super().__init__()
        layers, inputs = [], BANDS
        for taps, dilation in LAYERS:
            layers.append(torch.nn.Conv1d(inputs, CHANNELS, taps, padding=dilation * (taps // 2), dilation=dilation))
            inputs = CHANNELS
        self.layers = torch.nn.ModuleList(layers)
        self.out = torch.nn.Conv1d(CHANNELS, classes, 1)
        self.drop = torch.nn.Dropout(0.1)

    def forward(self, x):
        for i, layer in enumerate(self.layers):
            y = torch.relu(layer(x))
            x = self.drop(y if i == 0 else x + y)
        return self.out(x)
