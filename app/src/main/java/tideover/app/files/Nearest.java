package tideover.app.files;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The right word nearest to a misspelt one: fewest letters added, dropped, changed, or swapped with their neighbour
 * (Damerau 1964, restricted form). Capitals, and the way words are joined, do not count.
 */
final class Nearest {
    private static final int SHORTEST_SHARED = 4;

    private Nearest() {}

    /** Empty where nothing is near: more than one slip in three letters is another word, not a slip. */
    static Optional<String> to(String typed, Collection<String> words) {
        String slip = plain(typed);
        String best = null;
        int bestSlips = Integer.MAX_VALUE;
        for (String word : words) {
            String right = plain(word);
            int most = Math.max(1, Math.min(slip.length(), right.length()) / 3);
            if (Math.abs(slip.length() - right.length()) > most) {
                continue;
            }
            int slips = slips(slip, right);
            if (slips <= most && slips < bestSlips) {
                best = word;
                bestSlips = slips;
            }
        }
        return best == null ? byBeginningOrEnd(slip, words) : Optional.of(best);
    }

    /** The only word that begins or ends as the typed one, such as "longitude_deg" for "longitude", or the other way round. */
    private static Optional<String> byBeginningOrEnd(String slip, Collection<String> words) {
        List<String> near = words.stream()
                .filter(word -> sharesEnd(slip, plain(word)) || sharesEnd(plain(word), slip))
                .toList();
        return near.size() == 1 ? Optional.of(near.get(0)) : Optional.empty();
    }

    private static boolean sharesEnd(String shorter, String longer) {
        return shorter.length() >= SHORTEST_SHARED
                && (longer.startsWith(shorter + " ") || longer.endsWith(" " + shorter));
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ").strip();
    }

    static int slips(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(last[j - 1] + change, Math.min(last[j], row[j - 1]) + 1);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
            beforeLast = last;
            last = row;
        }
        return last[b.length()];
    }
}
