#!/usr/bin/python3
"""table_row.py LINE PEER: the last line that score.py prints as cells of the table of BENCHMARK.md.
A peer that hears no bars has none scored."""
import re
import sys

HEARS_BARS = ('cuelead',)


def main(line, peer):
    number = lambda name: re.search(rf'{name} ([-+.\d]+)', line).group(1)
    songs = line.split()[0]
    bars = (number('bar'), number('phrase')) if peer in HEARS_BARS else ('-', '-')
    print(' | '.join((number('F'), number('F35'), number('CMLt'), f'{number("right level")} of {songs}', f'{number("F >= .98")} of {songs}',
                      *bars, number('bias'), number('gap'))))


if __name__ == '__main__':
    main(*sys.argv[1:])
