package cuelead.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Small words of everyday prose beside words with a meaning: nothing that means a step, or none, is lost among them. */
class EverydayWordsTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1 step R forward but keep it small               | 1 R step R",
                "1 step R aside, sway the hips R                  | 1 R sway R",
                "1 R step to the side, bump hips R                | 1 R step R",
                "1 L sway the hips L, weight on L                 | 1 L sway L",
                "1-2 step R to side and sway, clap                | 1 R sway R, 2 - clap R",
                "1-2 step R to side, clap                         | 1 R step R, 2 - clap R",
                "1-2 rock cross R over L, recover L               | 1 R rock R, 2 L recover L",
                "1-2 cross R toe over L. Drop R heel              | 1 R toe L, 2 R drop R",
                "1-2 R heel in front, slap the toe down           | 1 R heel L, 2 R drop R",
                "1-2 R heel forward step R next to L              | 1 R heel L, 2 R close R",
                "1-2 cross R behind L point L toe to side         | 1 R behind R, 2 L point R",
                "1-2 step R to side, turn 1/4 L and step on the L | 1 R step R, 2 L step -90 L",
                "1-2 step R to side, turn 1/4 L as you step forward on the L | 1 R step R, 2 L step -90 L",
                "1-2 step R forward, pivot 1/2 L. Now you can see the back wall | 1 R step R, 2 L pivot -180 L",
                "1-2 step R forward, pivot 1/2 L, so that's the back wall | 1 R step R, 2 L pivot -180 L",
                "1-2 step R forward, pivot 1/2 L and that puts you at 6:00 | 1 R step R, 2 L pivot -180 L",
                "1-2 walk R, walk L. Strut it like you own the place! | 1 R walk R, 2 L walk L",
                "1-4 4 sways R, L, R, L with weight ending on L   | 1 R sway R, 2 L sway L, 3 R sway R, 4 L sway L",
                "1-2 two stomps R, L                              | 1 R stomp R, 2 L stomp L",
                "1 step R forward making a full spiral turn L     | 1 R step -360 R",
                "1-6 rocking chair R, step R fwd, pivot 1/4 L     | 1 R rock R, 2 L recover L, 3 R rock R, 4 L recover L, 5 R step R, 6 L pivot -90 L",
                "1 step R forward, sweeping L from back to front  | 1 R step R",
                "1 step R to side, dragging L in                  | 1 R step R",
                "1 step R forward with a sweep of L               | 1 R step R",
                "1 step R back - sweep L                          | 1 R step R",
                "1 step R back, sweep L from front to back        | 1 R step R",
                "1-2 step R forward, sweeping L                   | 1 R step R, 2 L sweep R",
                "1-2 touch R toe back twice. Weight stays on L    | 1 R toe L, 2 R toe L",
                "1-2 point R, close R (left foot is free)         | 1 R point L, 2 R close R",
                "1-2 point R, close R. Now your left foot is free | 1 R point L, 2 R close R",
                "1-2 heel R, heel R, so the right foot is ready   | 1 R heel L, 2 R heel L",
                "1-2 point R in front, point R to side            | 1 R point L, 2 R point L",
                "1-2 kick R in front, step R beside L             | 1 R kick L, 2 R close R",
                "1-2 rock R in front, recover L                   | 1 R rock R, 2 L recover L",
                "1-2 cross R in front, step L to side             | 1 R cross R, 2 L step L",
                "1-2 step R in front of L, step L to side         | 1 R cross R, 2 L step L",
                "1-2 pivot 1/4 L (R steps)                        | 1 R step R, 2 L pivot -90 L",
                "1-2 pivot 1/4 L (starting R)                     | 1 R step R, 2 L pivot -90 L",
                "1-2 R fwd, 1/2 piv L                             | 1 R step R, 2 L pivot -180 L",
                "1-2 R fwd, pvt 1/4 L                             | 1 R step R, 2 L pivot -90 L",
                "1-2 R fwd, piv. 1/2 L                            | 1 R step R, 2 L pivot -180 L",
                "1-2 walk R, walk L, big smile                    | 1 R walk R, 2 L walk L",
                "1-2 walk R, walk L. Easier: march R, L           | 1 R walk R, 2 L walk L",
                "1-2 walk R, walk L / easy: march on the spot     | 1 R walk R, 2 L walk L",
                "1-2 walk R, walk L; beginners march R, L         | 1 R walk R, 2 L walk L",
                "1-2 walk R, walk L. If you like, march R, L      | 1 R walk R, 2 L walk L",
                "1-2 walk R, walk L; simple version = march R, L  | 1 R walk R, 2 L walk L",
                "1-3 step R forward, hold, 1/4 turn L weight on L | 1 R step R, 2 - hold R, 3 L pivot -90 L",
                "1-3 step R fwd, clap, 1/2 turn L moving your weight onto your left foot | 1 R step R, 2 - clap R, 3 L pivot -180 L",
                "1-4 cheeky vine R, touch L                       | 1 R step R, 2 L behind L, 3 R step R, 4 L touch R",
                "1 try to step R forward                          | 1 R step R",
                "1 now just step your right foot forward          | 1 R step R",
                "1 and here we go: step R forward                 | 1 R step R",
                "1 you can take a really big step R forward       | 1 R step R",
                "1 step R again                                   | 1 R step R",
                "1 step off L onto R                              | 1 R step R",
                "1 step R next to L without weight                | 1 R close L",
                "1 step R forward without turning                 | 1 R step R",
                "1 step R forward with your hands up              | 1 R step R",
                "1 step R forward looking left                    | 1 R step R",
                "1 step R to side leaning to the left             | 1 R step R",
                "1 hitch R knee up                                | 1 R hitch L",
                "1 gently tap R heel in front, with attitude      | 1 R tap L",
                "1 finish with a stomp on R                       | 1 R stomp R",
                "1-2 step L, hold with hands up                   | 1 L step L, 2 - hold L",
                "1-2 step R, opposite arm forward                 | 1 R step R, 2 - hold R",
                "1-2 step R to side, both hands on hips           | 1 R step R, 2 - hold R",
                "1-2 step R to side, look left                    | 1 R step R, 2 - hold R",
                "1-2 step R to side, lean left                    | 1 R step R, 2 - hold R",
                "1-2 step R to side, left arm up                  | 1 R step R, 2 - hold R",
                "1-2 step R to side, head right                   | 1 R step R, 2 - hold R",
                "1-2 step R to side, knee in                      | 1 R step R, 2 - hold R",
                "1-2 roll R knee out, roll L knee out             | 1 - knee-pop B, 2 - knee-pop B",
                "1-2 jump feet apart, clap                        | 1 - jump B, 2 - clap B",
                "1-2 jump both feet together, clap                | 1 - jump B, 2 - clap B",
                "1-4 rock R forward, recover L (x2)               | 1 R rock R, 2 L recover L, 3 R rock R, 4 L recover L",
                "1-4 walk R, L, R, L (1/2 turn R over 4 counts)   | 1 R walk 45 R, 2 L walk 45 L, 3 R walk 45 R, 4 L walk 45 L",
                "1-4 walk R, L, R, L making a full turn R         | 1 R walk 90 R, 2 L walk 90 L, 3 R walk 90 R, 4 L walk 90 L",
                "1-4 walk R-L-R-L turning 3/4 L                   | 1 R walk -45 R, 2 L walk -90 L, 3 R walk -45 R, 4 L walk -90 L",
                "1-2 step R to side, stop                         | 1 R step R, 2 - hold R",
                "1-2 step R forward, do nothing                   | 1 R step R, 2 - hold R",
                "1-2 step R forward, stand still                  | 1 R step R, 2 - hold R",
                "1-2 step R forward, keep still                   | 1 R step R, 2 - hold R",
                "1-2 step R to side, wait here                    | 1 R step R, 2 - hold R",
                "1-2 stretch arms up, arms down                   | 1 - hold ?, 2 - hold ?",
                "1-2 shoulders up, shoulders down                 | 1 - hold ?, 2 - hold ?",
                "1-2 hips right, hips left                        | 1 R bump L, 2 L bump L",
                "1-2 hip right, hip left                          | 1 R bump L, 2 L bump L",
                "1-2 push hips right, left                        | 1 R bump L, 2 L bump L",
                "1-2 step R to side, other foot together          | 1 R step R, 2 L close L",
                "1-2 step R to side, opposite foot touches beside | 1 R step R, 2 L touch R",
                "1-2 touch R, same foot steps back                | 1 R touch L, 2 R step R",
                "1-2 step R to side, first L touches              | 1 R step R, 2 L touch R",
                "1-2 extend R heel forward, close R               | 1 R heel L, 2 R close R",
                "1-2 present R heel, step R together              | 1 R heel L, 2 R close R",
                "1-2 lift R heel, lower R heel                    | 1 R hitch L, 2 R drop R",
                "1-2 step R forward leaving L behind, recover L   | 1 R step R, 2 L recover L",
                "1-2 take R back, take L back                     | 1 R step R, 2 L step L",
                "1-2 move R to right, move L next to R            | 1 R step R, 2 L close L",
                "1-2 go forward R, L                              | 1 R step R, 2 L step L",
                "1-2 open R out to side, close L to R             | 1 R out R, 2 L close L",
                "1-2 step R to side (no weight change), hold      | 1 R step L, 2 - hold L",
                "1-2 step R or touch R, hold                      | 1 R step R, 2 - hold R",
                "1-2 walk R, L to the spot                        | 1 R walk R, 2 L walk L",
                "1-2 run on the spot R, L                         | 1 R inplace R, 2 L inplace L",
                "1-2 keep weight on R and touch L forward, hold   | 1 L touch R, 2 - hold R",
                "1-2 step R across, swing your hips               | 1 R cross R, 2 L sway L",
                "1-2 step R to side keeping L where it is, hold   | 1 R step R, 2 - hold R",
                "1-2 step R 45 fwd, lock L behind R               | 1 R step R, 2 L lock L",
                "1-2 step R fwd at 45 degrees, lock L behind R    | 1 R step R, 2 L lock L",
                "1-2 step R fwd at a 45 degree angle, hold        | 1 R step R, 2 - hold R",
                "1-2 step R fwd 45° R, touch L beside R           | 1 R step R, 2 L touch R",
                "1-2 R heel 45, close R                           | 1 R heel L, 2 R close R",
                "1-2 step R fwd, turn 90 degrees L                | 1 R step R, 2 L pivot -90 L",
                "1-2 step R fwd, turn left 180° weight on L       | 1 R step R, 2 L pivot -180 L",
                "1-2 step R fwd, pivot 180 deg L                  | 1 R step R, 2 L pivot -180 L",
                "1-2& R dorothy                                   | 1 R step R, 2 L lock L, 2& R step R",
                "1-2& wizard step L                               | 1 L step L, 2 R lock R, 2& L step L",
                "1-2 cross toe strut R                            | 1 R toe L, 2 R drop R",
                "1&2 shuffle fwd R,L,R turning 1/2 R              | 1 R step 180 R, 1& L close L, 2 R step R",
                "1&2 triple step R,L,R making 1/2 turn R          | 1 R inplace 180 R, 1& L inplace L, 2 R inplace R",
                "1&2 shuffle back R,L,R turning 1/2 L             | 1 R step -180 R, 1& L close L, 2 R step R",
                "1&2 chasse R stepping R, L, R turning 1/4 R      | 1 R step 90 R, 1& L close L, 2 R step R",
                "1&2 shuffle fwd (R,L,R) turning 1/2 R            | 1 R step 180 R, 1& L close L, 2 R step R",
                "1-2 roll hips to the left, ending with weight on left | 1 - hiproll ?, 2 - hiproll L",
                "1-2 step R, very slightly turn 1/8 right onto L  | 1 R step R, 2 L pivot 45 L"
            })
    void eachWordKeepsItsMeaning(String line, String actions) {
        assertEquals(actions, SameMeaningTest.read(line));
    }

    /** What is not known to move a foot moves none: it is told, and nothing is guessed behind it. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "1-2 step R forward, do not step L",
                "1-2 step R forward, without stepping L",
                "1-2 step R forward, come up on toes",
                "1-2 step R forward, go down",
                "1-2 hop on R, step L",
                "1-2 leave the right foot where it is, step L forward",
                "1-2 push off L, step R"
            })
    void whatMovesNoFootIsNoStep(String line) {
        ReadSheet sheet = SheetReader.read("same", "Same\n\nSection 1\n" + line + "\n3-8 Walk R, L, R, L, R, L\n");
        long steps = SheetDump.rows(sheet.dance().orElseThrow()).stream()
                .filter(row -> row.split("\t")[9].equals("F"))
                .count();
        assertEquals(7, steps);
    }
}
