"""The network in numpy alone, read from the files that the program reads: what the Java has to equal within 1e-4."""
import numpy as np

from feature import compressed, magnitudes


def elu(z):
    return np.where(z > 0, z, np.exp(np.minimum(z, 0)) - 1)


class Weights:
    def __init__(self, numbers):
        self.numbers, self.at = numbers, 0

    def take(self, *shape):
        count = int(np.prod(shape))
        self.at += count
        return self.numbers[self.at - count:self.at].reshape(shape)


def over_bands(x, weights, outputs, frame_taps, band_taps, pool):
    """[channel][band][frame]; silence before and after, bands not padded; the largest of each group of bands."""
    w, b = weights.take(outputs, len(x), frame_taps, band_taps), weights.take(outputs)
    bands, frames = x.shape[1] - band_taps + 1, x.shape[2]
    padded = np.pad(x, ((0, 0), (0, 0), (frame_taps // 2,) * 2))
    y = np.repeat(np.repeat(b[:, None, None], bands, 1), frames, 2).astype(np.float32)
    for i in range(frame_taps):
        for j in range(band_taps):
            y += np.tensordot(w[:, :, i, j], padded[:, j:j + bands, i:i + frames], 1)
    groups = bands // pool
    return elu(y[:, :groups * pool].reshape(outputs, groups, pool, frames).max(2))


def over_time(x, weights, outputs, taps, dilation):
    w, b = weights.take(outputs, len(x), taps), weights.take(outputs)
    frames = x.shape[1]
    y = np.repeat(b[:, None], frames, 1).astype(np.float32)
    for k in range(taps):
        shift = (k - taps // 2) * dilation
        a, z = max(0, -shift), min(frames, frames - shift)
        if a < z:
            y[:, a:z] += w[:, :, k] @ x[:, a + shift:z + shift]
    return y


def block(x, weights, taps, dilation):
    near = over_time(x, weights, len(x), taps, dilation)
    far = over_time(x, weights, len(x), taps, 2 * dilation)
    return x + over_time(elu(np.concatenate([near, far])), weights, len(x), 1, 1)


def forward(feature, layers, numbers):
    """[frame][band] -> [output][frame], 0 to 1; layers: the text of net.txt."""
    weights, x = Weights(numbers), feature.T[None]
    for line in layers.splitlines():
        word, *numbers_said = line.split()
        said = [int(n) for n in numbers_said] if word in ('conv', 'block', 'out') else []
        if word == 'conv':
            x = over_bands(x, weights, *said)
            if x.shape[1] == 1:
                x = x[:, 0]
        elif word == 'block':
            x = block(x, weights, *said)
        elif word == 'out':
            return 1 / (1 + np.exp(-over_time(elu(x), weights, said[0], 1, 1)))
    raise ValueError('the network has no last layer')


def hear(samples, folder):
    """A sound at 22,050 Hz through the files of a folder."""
    layers = open(f'{folder}/net.txt').read()
    return forward(compressed(magnitudes(samples)), layers, np.fromfile(f'{folder}/net.f32', '<f4'))
