#!/usr/bin/python3
"""train.py DATA OUT.pt MINUTES [START [RATE]]: trains the network on the clips that generate.py made. Adam, one cosine of learning rate
over the time that is given, a moving average of the weights; the weights with the least loss on the validation
songs are kept. START: a folder with a network's files to go on from, with the highest learning RATE."""
import copy
import math
import sys
import time

import numpy as np
import torch
import torch.nn as nn
import torch.nn.functional as F

from crops import chances, crop, load
from network import OUTPUTS, BeatNetwork
from start import take_up

BATCH, LEARNING_RATE, CLIP_NORM = 8, 2.5e-3, .5
LOSS_WEIGHTS = torch.tensor([1., 1., .4])
CHECK_EVERY = 400


def losses(logits, target, mask):
    """Mean cross entropy of each output."""
    each = F.binary_cross_entropy_with_logits(logits, target, reduction='none')
    return (each * mask[:, None]).sum((0, 2)) / mask.sum()


def stacked(pieces):
    return [torch.from_numpy(np.stack(rows)) for rows in zip(*pieces)]


def follow(average, network, step):
    decay = min(.998, step / (step + 20.))
    with torch.no_grad():
        for slow, fast in zip(average.parameters(), network.parameters()):
            slow.mul_(decay).add_(fast, alpha=1 - decay)


def checked(network, pieces):
    with torch.no_grad():
        return np.mean([losses(network(x[None, None]), y[None], m[None]).numpy() for x, y, m in pieces], 0)


def main(data, out, minutes, start_from=None, rate=LEARNING_RATE):
    torch.manual_seed(1)
    torch.set_num_threads(1)
    r = np.random.RandomState(3)
    clips = load(data, 'train')
    drawn = chances(clips)
    valid = [[torch.from_numpy(a) for a in crop(r, clip, False)] for clip in load(data, 'valid')]
    network = BeatNetwork()
    if start_from:
        take_up(network, start_from)
    print(len(clips), 'clips,', len(valid), 'to validate,', sum(p.numel() for p in network.parameters()), 'weights', flush=True)
    average = copy.deepcopy(network).eval()
    adam = torch.optim.Adam(network.parameters(), float(rate))
    seconds, start, step, best = 60 * float(minutes), time.time(), 0, math.inf
    while time.time() - start < seconds:
        share = (time.time() - start) / seconds
        adam.param_groups[0]['lr'] = float(rate) * min(1, (step + 1) / 100) * (.5 + .5 * math.cos(math.pi * share)) + 1e-5
        x, y, mask = stacked([crop(r, clips[r.choice(len(clips), p=drawn)], True) for _ in range(BATCH)])
        loss = (losses(network(x[:, None]), y, mask) * LOSS_WEIGHTS).sum()
        adam.zero_grad()
        loss.backward()
        nn.utils.clip_grad_norm_(network.parameters(), CLIP_NORM)
        adam.step()
        step += 1
        follow(average, network, step)
        if step % CHECK_EVERY == 0 or time.time() - start >= seconds:
            now = checked(average, valid)
            print(f'step {step} after {time.time() - start:.0f} s: ' + ', '.join(f'{n} {v:.4f}' for n, v in zip(OUTPUTS, now)), flush=True)
            if (now * LOSS_WEIGHTS.numpy()).sum() < best:
                best = float((now * LOSS_WEIGHTS.numpy()).sum())
                torch.save(average.state_dict(), out)


if __name__ == '__main__':
    main(*sys.argv[1:])
