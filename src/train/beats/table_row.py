#!/usr/bin/python3
"""table_row.py LINE SPLIT FOLDER PEER BEFORE AFTER: the last line that score.py prints as cells of the table of BENCHMARK.md.
A peer that hears no bars has none scored. BEFORE, AFTER: CPU seconds."""
import glob
import os
import re
import sys

HEARS_BARS = ('cuelead',)
BYTES_A_MINUTE = 2 * 22050 * 60


def main(line, split, folder, peer, before, after):
    number = lambda name: re.search(rf'{name} ([-+.\d]+)', line).group(1)
    songs = line.split()[0]
    minutes = sum(os.path.getsize(f) for f in glob.glob(f'{folder}/{split}/*.wav')) / BYTES_A_MINUTE
    bars = (number('bar'), number('phrase')) if peer in HEARS_BARS else ('-', '-')
    cpu = (float(after) - float(before)) / minutes
    print(' | '.join((number('F'), number('F35'), number('CMLt'), f'{number("right level")} of {songs}', f'{number("F >= .98")} of {songs}',
                      *bars, number('bias'), number('gap'), f'{cpu:.2f}')))


if __name__ == '__main__':
    main(*sys.argv[1:])
