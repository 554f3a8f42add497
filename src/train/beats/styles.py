"""The styles of the made songs. A groove gives each drum a row of steps: X loud, x firm, o soft, g ghost, ? now and then,
. none. Rows may last several bars; grooves of one style are mixed within a song. Patterns are common practice."""
from dataclasses import dataclass, field

from music import *


@dataclass(frozen=True)
class Style:
    """beats_per_bar: felt beats; steps: steps in a beat (3 = triplets); tempo: felt beats a minute, from and to; share: how
    often; distorted: how often with distorted guitars; bass, comp: names of players in band.py, each as likely."""

    name: str
    beats_per_bar: int
    steps: int
    tempo: tuple
    share: float
    grooves: tuple
    bass: tuple = ('root', 'eighths', 'free')
    comp: tuple = ('free', 'eighths', 'quarters', 'broken', 'whole')
    distorted: float = 0.1
    wild: float = 0.3  # how often the groove is a random one instead


def _g(**rows):
    names = dict(k=KICK, s=SNARE, st=STICK, cl=CLAP, h=HAT, oh=OPEN_HAT, ph=PEDAL_HAT, r=RIDE, bell=BELL, cr=CRASH, ch=CHINA,
                 tb=TAMBOURINE, cb=COWBELL, br=BRUSH, sh=SHAKER, wd=WOOD, cm=CONGA_MUTE, chh=CONGA_HIGH, cl2=CONGA_LOW,
                 bh=BONGO_HIGH, bl=BONGO_LOW, tr=TRIANGLE, lt=LOW_TOM, mt=MID_TOM)
    return {names[name]: row for name, row in rows.items()}


BACKBEAT = (
    _g(k='X.....?.X..?..?.', s='....X.......X...', h='x.o.x.o.x.o.x.o.'),
    _g(k='X..?....X.x...?.', s='....X..g.g..X...', h='xoxoxoxoxoxoxoxo'),
    _g(k='X...X...X...X...', s='....X.......X...', h='..x...x...x...x.'),
    _g(k='X.x.....?.X.....', s='....X.......X..?', oh='X...X...X...X...'),
    _g(k='X.......X.......', s='....X.......X...', r='x...x.o.x...x.o.', ph='....o.......o...'),
    _g(k='X.....X.X.....X.', cl='....X.......X...', tb='o.x.o.x.o.x.o.x.'),
)
OFFBEAT = (  # loud between the beats
    _g(k='X...X...X...X...', s='..X...X...X...X.', h='x.x.x.x.x.x.x.x.'),
    _g(k='X...X...X...X...', s='..x...x...x...X.', oh='..X...X...X...X.'),
    _g(k='X.......X.......', st='..X...X...X...X.', h='x...x...x...x...'),
    _g(k='X...X...X...X...', cl='....X.......X...', oh='..X...X...X...X.'),
    _g(k='X.......X.......', s='....X.......X...', cr='..x...x...x...x.'),
)
TRAIN = (
    _g(k='X...X...X...X...', br='o.oXo.oXo.oXo.oX'), _g(k='X...X...X...X...', s='ggXgggXgggXgggXg'),
    _g(k='X.......X.......', br='gggoXgggogggXgog'), _g(k='X...x...X...x...', st='..X...X...X...X.', h='o...o...o...o...'),
)
BOOM = (
    _g(k='X.......X.......', s='....X.......X...'), _g(k='X.......X.......', st='....X.......X...', h='x.o.x.o.x.o.x.o.'),
    _g(k='X...X...X...X...', br='....X.......X.g.', h='x...x...x...x...'),
    _g(k='X.......X.....?.', s='....X.......X...', r='x...x...x...x...'),
)
HALF = (
    _g(k='X.....?...?.....', s='........X.......', h='x.o.x.o.x.o.x.o.'), _g(k='X..?..X.....?...', s='........X.......', ch='X...X...X...X...'),
    _g(k='X.?...?.........', s='........X......g', h='xooxooxoxooxooxo'),
)
METAL = (
    _g(k='X.X.X.X.X.X.X.X.', s='....X.......X...', ch='X...X...X...X...'), _g(k='XXXXXXXXXXXXXXXX', s='....X.......X...', r='X...X...X...X...'),
    _g(k='X.X.X.X.X.X.X.X.', s='..X...X...X...X.', h='X.X.X.X.X.X.X.X.'), _g(k='X.XXX.XXX.XXX.XX', s='........X.......', cr='X...X...X...X...'),
    _g(k='X.....X.X.....X.', s='....X.......X...', h='X...X...X...X...'),
)
FUNK = (_g(k='X..X..?...X..?..', s='....X..g.g..X..g', h='xoxoxoxoxoxoxoxo'), _g(k='X.X....X.?X.....', s='....X.g.g...X.g.', h='x.xox.xox.xox.x.'))
CHA = (
    _g(cb='X...x...X...x...', cm='o.g.X.g.o.g.o.x.', cl2='............x.x.', k='X.......X.......'),
    _g(k='X...X...X...X...', st='....X.......X.x.', sh='x.o.x.o.x.o.x.o.', wd='x...x...x...x...'),
    _g(cb='x.o.x.o.x.o.x.o.', bh='x.o.x.o.x.o.x.o.', bl='......x.......x.', k='x......xX......x'),
    _g(k='X.....x.X.....x.', st='....X.......X...', sh='xoxoxoxoxoxoxoxo', cl2='............X.X.'),
)
LATIN = (
    _g(cm='o.g.X.g.o.g.o.g.', cl2='............x.x.', st='X..X..X...X.X...', sh='x.o.x.o.x.o.x.o.'),
    _g(k='X..x..x.X..x..x.', st='..X.X...X..X..X.', h='xoxoxoxoxoxoxoxo'), _g(k='X...X...X...X...', s='...X..X....X..X.', sh='xoxoxoxoxoxoxoxo'),
)
NIGHT = (
    _g(k='X.......X.x.....', st='....X.......X...', h='x.o.x.o.x.o.x.o.'), _g(k='X.....x...x.....', st='....X.......X..o', sh='xoxoxoxoxoxoxoxo'),
    _g(k='X.......X.......', br='gggoXgggogggXggg', tr='x...............'), _g(k='X..x....X..x....', s='....X.......X...', tb='..o...o...o...o.'),
)
SHUFFLE = (
    _g(k='X.....X.....', s='...X.....X..', h='x.ox.ox.ox.o'), _g(k='X..x..X..x..', s='...X.gg.gX.g', r='x.ox.ox.ox.o'),
    _g(k='X.?...X.?...', s='...X.....X..', h='x..x..x..x..'), _g(k='X..X..X..X..', st='...X.....X..', h='..X..X..X..X'),
    _g(k='X....?X....?', s='..X..X..X..X', h='x..x..x..x..'),
)
SWING = (
    _g(r='x..x.ox..x.o', ph='...X.....X..', k='o..o..o..o..'), _g(r='x..x.ox..x.o', ph='...X.....X..', s='..?..?..?..?', k='?.....?....?'),
    _g(br='o..X.go..X.g', ph='...x.....x..'), _g(h='x.ox.ox.ox.o', k='X.....X.....', s='...X.....X..'),
)
TWELVE = (
    _g(k='X.....X.....', s='...X.....X..', h='xooxooxooxoo'), _g(k='X....xX....x', s='...X.....X..', r='x.ox.ox.ox.o'),
    _g(k='X..........x', st='...X.....X..', h='oooooooooooo'), _g(k='X....xX.....', s='...X.....X.g', tb='x..x..x..x..'),
)
SIX = (
    _g(k='X.....', s='...X..', h='xooxoo'), _g(k='X..X..', tb='..x..x', st='...X..'), _g(k='X....x', s='...X.g', r='x.ox.o'),
    _g(k='X..x..', bh='xooxoo'), _g(k='X.....', br='goxgox'),
)
WALTZ = (
    _g(k='X.....', s='..x.x.'), _g(k='X.....', st='..x.x.', h='xooooo'), _g(k='X....?', s='....X.', r='x.x.x.'), _g(k='X.....', br='o.X.X.'),
    _g(k='X.....', tb='..x.x.'), _g(k='X...x.', s='..X...', h='x.x.x.'), _g(k='X..........?', s='..x.x...x.X.', h='x.o.o.x.o.o.'),
)
POLKA = (
    _g(k='X...X...', s='..X...X.'), _g(k='X...X...', s='..xg..xg', h='..x...x.'), _g(k='X...X...', st='..X...X.', tb='..o...o.'),
    _g(k='X.......', s='....X...', h='x.x.x.x.'), _g(k='X...x...', br='g.Xgg.Xg'), _g(k='X...X...', s='g.Xgg.XX', cr='X.......'),
)
REEL = (
    _g(k='X...X...', bh='xoxoxoxo'), _g(k='X...X...', s='ggXgggXg'), _g(k='X.......', tb='xoXoxoXo', s='....X...'), _g(k='X...X...', cl='....X...'),
)
SKANK = (_g(k='........X.......', st='........X.......', h='x.o.x.o.x.o.x.o.'), _g(k='X...X...X...X...', s='........X.......', h='..x...x...x...x.'))
CLAPS = (_g(cl='....X.......X...'), _g(k='X...X...X...X...', cl='....X.......X...', tb='..o...o...o...o.'), _g(cl='X...X...X...X...'), _g(tb='x.o.X.o.x.o.X.o.'))
NONE = ({},)

COUNTRY_COMP = ('off', 'chick', 'eighths', 'boomchick', 'free')
STYLES = (
    Style('country', 4, 4, (84, 160), 3, TRAIN + BOOM + BACKBEAT[:2], ('fifths', 'root', 'walk'), COUNTRY_COMP, .05, .1),
    Style('twostep', 4, 4, (148, 200), 2, BOOM + BACKBEAT[4:5], ('fifths', 'walk'), ('chick', 'quarters', 'boomchick', 'free'), .03, .05),
    Style('polka', 2, 4, (96, 136), 2.2, POLKA, ('fifths', 'fifths', 'root'), ('off', 'off', 'boomchick', 'eighths'), 0., .1),
    Style('reel', 2, 4, (88, 126), 1.5, REEL + POLKA[:3], ('fifths', 'root'), ('off', 'eighths', 'boomchick', 'whole'), 0., .1),
    Style('waltz', 3, 2, (76, 190), 3.2, WALTZ, ('first', 'first', 'arpeggio', 'walk', 'firstthird'), ('waltz', 'waltz', 'waltz', 'broken', 'whole', 'free'), .05, .15),
    Style('cha', 4, 4, (96, 132), 2, CHA, ('tumbao', 'root', 'fifths', 'free'), ('montuno', 'chick', 'free', 'off'), .03, .1),
    Style('latin', 4, 4, (90, 160), 1.5, LATIN + CHA[:2], ('tumbao', 'free'), ('montuno', 'free', 'off'), 0., .2),
    Style('nightclub', 4, 4, (58, 92), 2.2, NIGHT + BACKBEAT[:1], ('root', 'free', 'whole'), ('broken', 'whole', 'free', 'eighths'), .05, .15),
    Style('twelve', 4, 3, (54, 88), 2, TWELVE, ('first', 'triplets', 'arpeggio'), ('triplets', 'broken', 'whole'), .15, .1),
    Style('six', 2, 3, (56, 132), 2.4, SIX, ('first', 'quarters', 'triplets'), ('triplets', 'broken', 'off3', 'free'), .1, .15),
    Style('shuffle', 4, 3, (74, 172), 3, SHUFFLE, ('walk', 'quarters', 'shuffle', 'root'), ('shuffle', 'off3', 'chick', 'free', 'triplets'), .25, .15),
    Style('swing', 4, 3, (100, 204), 2, SWING, ('walk', 'walk', 'fifths'), ('free', 'quarters', 'chick', 'whole'), 0., .1),
    Style('rock', 4, 4, (78, 182), 4.5, BACKBEAT + OFFBEAT[1:] + HALF[:1], ('eighths', 'eighths', 'free', 'root'), ('eighths', 'free', 'whole', 'broken'), .7, .4),
    Style('metal', 4, 4, (84, 204), 3, METAL + HALF[1:2] + OFFBEAT[:1], ('eighths', 'free', 'root'), ('free', 'whole'), 1., .35),
    Style('pop', 4, 4, (70, 145), 3.5, BACKBEAT + HALF[:1] + OFFBEAT[3:4], distorted=.15),
    Style('dance', 4, 4, (98, 150), 2, OFFBEAT[3:4] + BACKBEAT[2:3] + CLAPS[1:2], ('eighths', 'offbass', 'root', 'free'), ('off', 'free', 'quarters', 'whole'), .05, .15),
    Style('halftime', 4, 4, (100, 172), 1.5, HALF, ('root', 'free', 'whole'), distorted=.4),
    Style('offbeat', 4, 4, (72, 200), 3, OFFBEAT + BACKBEAT[:1], ('fifths', 'eighths', 'walk'), ('off', 'off', 'free', 'quarters'), .25, .1),
    Style('funk', 4, 4, (78, 124), 1.5, FUNK + BACKBEAT[1:2], ('free', 'eighths'), ('free', 'off', 'chick'), .15, .3),
    Style('ballad', 4, 4, (58, 108), 2.5, NONE, ('root', 'whole', 'fifths', 'none'), ('broken', 'whole', 'eighths', 'quarters', 'free'), .05, 0.),
    Style('waltzballad', 3, 2, (70, 150), 1, NONE, ('first', 'none'), ('waltz', 'broken', 'whole'), 0., 0.),
    Style('claps', 4, 4, (80, 144), 1, CLAPS, ('root', 'none', 'fifths'), ('quarters', 'eighths', 'off', 'free'), 0., .1),
)
# Never trained on: what the network makes of a style it has not met.
UNSEEN_STYLES = (Style('skank', 4, 4, (66, 100), 1, SKANK, ('free', 'tumbao'), ('off', 'off', 'free'), .05, 0.),)
