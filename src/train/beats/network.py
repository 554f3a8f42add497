"""The network: small convolutions over bands and frames, then dilated residual blocks along time (a temporal convolutional
network, after Davies and Boeck 2019, Boeck and Davies 2020). The program runs it in Java (BeatNetwork)."""
import torch
import torch.nn as nn
import torch.nn.functional as F

from feature import BANDS

FRONT, CHANNELS, TAPS, POOL = 16, 24, 5, 3
DILATIONS = (1, 2, 4, 8, 16, 32, 64, 128, 256)
OUTPUTS = ('beat', 'downbeat', 'phrase')


class Block(nn.Module):
    """x + mix(elu(near(x), far(x))); far looks twice as wide."""

    def __init__(self, dilation):
        super().__init__()
        wide = TAPS // 2 * dilation
        self.near = nn.Conv1d(CHANNELS, CHANNELS, TAPS, padding=wide, dilation=dilation)
        self.far = nn.Conv1d(CHANNELS, CHANNELS, TAPS, padding=2 * wide, dilation=2 * dilation)
        self.mix = nn.Conv1d(2 * CHANNELS, CHANNELS, 1)

    def forward(self, x, dropout):
        y = F.elu(torch.cat([self.near(x), self.far(x)], 1))
        return x + self.mix(F.dropout1d(y, dropout, self.training))


class BeatNetwork(nn.Module):
    """[song][1][frame][band] -> [song][output][frame], as logits."""

    def __init__(self, dropout=.08):
        super().__init__()
        self.dropout = dropout
        bands = ((BANDS - 2) // POOL - 2) // POOL
        self.first = nn.Conv2d(1, FRONT, 3, padding=(1, 0))
        self.second = nn.Conv2d(FRONT, FRONT, 3, padding=(1, 0))
        self.third = nn.Conv2d(FRONT, CHANNELS, (3, bands), padding=(1, 0))
        self.blocks = nn.ModuleList([Block(d) for d in DILATIONS])
        self.out = nn.Conv1d(CHANNELS, len(OUTPUTS), 1)
        nn.init.constant_(self.out.bias, -3.)

    def forward(self, x):
        x = F.elu(F.max_pool2d(self.first(x), (1, POOL)))
        x = F.elu(F.max_pool2d(self.second(x), (1, POOL)))
        x = F.dropout(F.elu(self.third(x)).squeeze(3), self.dropout, self.training)
        for block in self.blocks:
            x = block(x, self.dropout)
        return self.out(F.elu(x))
