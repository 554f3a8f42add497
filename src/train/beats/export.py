#!/usr/bin/python3
"""export.py MODEL.pt FOLDER VECTOR.csv: writes the network as the program reads it (FOLDER/net.txt: layers; net.f32: weights
in their order), checks the numpy forward pass against torch, and writes a test vector of what it gives for a made signal."""
import sys

import numpy as np
import torch

import forward
from feature import GAIN, RATE, compressed, magnitudes
from network import DILATIONS, OUTPUTS, POOL, TAPS, BeatNetwork
from start import tensors


def layers(network):
    yield '# The layers of the network whose weights are net.f32, in order; read by NetworkShape. How it was made: RECIPE.md.'
    yield f'gain {GAIN:g}'
    for layer, pool in ((network.first, POOL), (network.second, POOL), (network.third, 1)):
        outputs, _, frames, bands = layer.weight.shape
        yield f'conv {outputs} {frames} {bands} {pool}'
    for dilation in DILATIONS:
        yield f'block {TAPS} {dilation}'
    yield f'out {len(OUTPUTS)}'


def numbers(network):
    return np.concatenate([t.detach().numpy().astype('<f4').ravel() for t in tensors(network)])


def signal():
    x = np.zeros(4 * RATE)
    t = np.arange(2000) / RATE
    for k in range(8):
        hz = 55 if k % 4 == 0 else 80
        x[11025 * k:11025 * k + 2000] += np.sin(2 * np.pi * hz * t) * np.exp(-t / .04)
    return x


ABOUT = """# What the numpy forward pass of the network gives for a made signal:
# 8 beats of 0.5 s at 22050 Hz, 88200 samples: from sample 11025 k on, 2000 samples of
# sin(2 pi f n / 22050) exp(-n / 22050 / 0.04), f = 55 where k % 4 == 0, else 80.
# row,values
"""


def main(model, folder, vector):
    network = BeatNetwork()
    network.load_state_dict(torch.load(model))
    network.eval()
    numbers(network).tofile(f'{folder}/net.f32')
    with open(f'{folder}/net.txt', 'w') as out:
        out.write('\n'.join(layers(network)) + '\n')
    x = compressed(magnitudes(signal()))
    given = forward.hear(signal(), folder)
    with torch.no_grad():
        wanted = torch.sigmoid(network(torch.from_numpy(x)[None, None]))[0].numpy()
    worst = float(np.abs(given - wanted).max())
    print(f'numpy and torch differ by {worst:.1e} at most')
    assert worst < 1e-4
    with open(vector, 'w') as out:
        out.write(ABOUT)
        for name, row in (('feature of frame 25', x[25]), *zip(OUTPUTS, given)):
            out.write(name + ',' + ','.join(f'{v:.7g}' for v in row) + '\n')


if __name__ == '__main__':
    main(*sys.argv[1:])
