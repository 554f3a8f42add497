"""Takes a network up where the files of a folder (net.f32, in the order of export.py) left it."""
import numpy as np
import torch


def tensors(network):
    """Weights and biases in the order of the file."""
    parts = [network.first, network.second, network.third]
    for block in network.blocks:
        parts += [block.near, block.far, block.mix]
    return [t for part in parts + [network.out] for t in (part.weight, part.bias)]


def take_up(network, folder):
    """Fills the network; outputs that the files do not have yet stay as they are."""
    numbers, at = np.fromfile(f'{folder}/net.f32', '<f4'), 0
    before = tensors(network)[:-2]
    with torch.no_grad():
        for t in before:
            t.copy_(torch.from_numpy(numbers[at:at + t.numel()].reshape(t.shape)))
            at += t.numel()
        channels = network.out.weight.shape[1]
        outputs = (len(numbers) - at) // (channels + 1)
        network.out.weight[:outputs, :, 0] = torch.from_numpy(numbers[at:at + outputs * channels].reshape(outputs, channels))
        network.out.bias[:outputs] = torch.from_numpy(numbers[at + outputs * channels:])
