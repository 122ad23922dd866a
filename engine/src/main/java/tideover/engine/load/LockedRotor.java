package tideover.engine.load;

import tideover.engine.quantity.Require;

/**
 * Locked-rotor kilovolt-amperes for each horsepower by the code letter on a motor's plate, NFPA 70 table 430.7(B); check
 * the edition in force. T to V from memory. There are no letters I, O, Q.
 */
public final class LockedRotor {
    private static final String LETTERS = "ABCDEFGHJKLMNPRSTUV";

    /** Least of each letter's range, in the letters' order; a range ends where the next begins. */
    private static final double[] LEAST_KVA_PER_HP = {
        0, 3.15, 3.55, 4.0, 4.5, 5.0, 5.6, 6.3, 7.1, 8.0, 9.0, 10.0, 11.2, 12.5, 14.0, 16.0, 18.0, 20.0, 22.4
    };

    /** Last printed figure of each range; V has no end, so a quarter above its beginning stands for it. */
    private static final double[] MOST_KVA_PER_HP = {
        3.14, 3.54, 3.99, 4.49, 4.99, 5.59, 6.29, 7.09, 7.99, 8.99, 9.99, 11.19, 12.49, 13.99, 15.99, 17.99, 19.99,
        22.39, 28.0
    };

    private LockedRotor() {}

    public static boolean isLetter(String letter) {
        return letter.length() == 1 && LETTERS.contains(letter);
    }

    /** The low end of a letter's range, VA. */
    public static double leastVa(String letter, double horsepower) {
        return 1000 * horsepower * LEAST_KVA_PER_HP[index(letter)];
    }

    /** The high end of a letter's range, VA: what a start is judged by. */
    public static double mostVa(String letter, double horsepower) {
        return 1000 * horsepower * MOST_KVA_PER_HP[index(letter)];
    }

    private static int index(String letter) {
        if (!isLetter(letter)) {
            throw new IllegalArgumentException("no code letter: " + letter);
        }
        return Require.within(0, LETTERS.length() - 1, "letter", LETTERS.indexOf(letter));
    }
}
