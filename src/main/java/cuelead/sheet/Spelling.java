package cuelead.sheet;

/** How far apart two spellings are. */
public final class Spelling {
    private Spelling() {}

    /**
     * Letters to add, drop, change or swap with their neighbour (optimal string alignment: Damerau, "A technique for
     * computer detection and correction of spelling errors", CACM 7(3), 1964).
     */
    public static int distance(String from, String to) {
        int[][] cost = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                cost[i][j] = i == 0 || j == 0 ? i + j : cheapest(cost, from, to, i, j);
            }
        }
        return cost[from.length()][to.length()];
    }

    private static int cheapest(int[][] cost, String from, String to, int i, int j) {
        int changed = cost[i - 1][j - 1] + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
        int best = Math.min(changed, Math.min(cost[i - 1][j], cost[i][j - 1]) + 1);
        boolean swapped =
                i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(best, cost[i - 2][j - 2] + 1) : best;
    }
}
