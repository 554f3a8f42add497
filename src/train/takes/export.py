"""export.py EAR.pt SPEECH.npz OUT.f32 VECTOR.csv: writes the network as the program reads it (weights of each layer, then
the logarithms of how frequent each sound is), and a test vector of what it gives for a made signal."""
import sys

import numpy as np
import torch

import speech
from network import RATE, Ear, feature

SMOOTHED = 0.5   # of the frequencies: rare sounds are not to win only because they are rare


def signal():
    """A second of three buzzing tones with gaps, 16 kHz."""
    n = np.arange(RATE)
    return np.where(n % 4000 < 3000, np.sign(np.sin(2 * np.pi * (110 + 40 * (n // 4000)) * n / RATE)) * 0.2, 0)


def main(model, corpus, out, vector):
    ear = Ear(len(speech.PHONES))
    ear.load_state_dict(torch.load(model))
    ear.eval()
    counts = np.bincount(np.load(corpus)["y"].ravel(), minlength=len(speech.PHONES)) + 1.0
    priors = SMOOTHED * np.log(counts / counts.sum())
    parts = [t for layer in (*ear.layers, ear.out) for t in (layer.weight, layer.bias)]
    np.concatenate([t.detach().numpy().astype("<f4").ravel() for t in parts] + [priors.astype("<f4")]).tofile(out)
    x = feature(signal())
    with torch.no_grad():
        given = ear(torch.from_numpy(x)[None])[0].numpy()
    with open(vector, "w") as file:
        file.write("# What the network gives for a made signal: 16000 samples at 16 kHz; sample n is 0.2 times the sign of\n"
                   "# sin(2 pi (110 + 40 floor(n / 4000)) n / 16000) where n mod 4000 < 3000, else 0.\n# row,values\n")
        for name, row in [("feature of frame 40", x[:, 40])] + [("frame %d" % i, given[:, i]) for i in (0, 40, 77, 100)]:
            file.write(name + "," + ",".join("%.6g" % v for v in row) + "\n")


if __name__ == "__main__":
    main(*sys.argv[1:])
