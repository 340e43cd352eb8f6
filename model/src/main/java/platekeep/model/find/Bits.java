package platekeep.model.find;

import java.util.Arrays;

/** A set of small numbers, one bit each. */
final class Bits {
    private long[] words;

    Bits(int size) {
        words = new long[(size + 63) >>> 6];
    }

    private Bits(long[] words) {
        this.words = words;
    }

    Bits copy() {
        return new Bits(words.clone());
    }

    void add(int number) {
        int at = number >>> 6;
        if (at >= words.length) {
            words = Arrays.copyOf(words, at + 1);
        }
        words[at] |= 1L << number;
    }

    void remove(int number) {
        if (number >>> 6 < words.length) {
            words[number >>> 6] &= ~(1L << number);
        }
    }

    boolean has(int number) {
        int at = number >>> 6;
        return at < words.length && (words[at] & 1L << number) != 0;
    }

    int count() {
        int count = 0;
        for (long word : words) {
            count += Long.bitCount(word);
        }
        return count;
    }

    /** How many numbers the two share. */
    int countBoth(Bits other) {
        int count = 0;
        int most = Math.min(words.length, other.words.length);
        for (int i = 0; i < most; i++) {
            count += Long.bitCount(words[i] & other.words[i]);
        }
        return count;
    }

    void keep(Bits other) {
        for (int i = 0; i < words.length; i++) {
            words[i] &= i < other.words.length ? other.words[i] : 0;
        }
    }

    void addAll(Bits other) {
        if (other.words.length > words.length) {
            words = Arrays.copyOf(words, other.words.length);
        }
        for (int i = 0; i < other.words.length; i++) {
            words[i] |= other.words[i];
        }
    }
}
