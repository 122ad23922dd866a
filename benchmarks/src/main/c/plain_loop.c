/*
 * The plain double loop over outages, in C: for every start the greatest drawdown of its window,
 *     k = max(0, k - gain);  most = max(most, k)
 * taken through the window's hours. Thirty-two starts go side by side, so that the compiler turns the inner loop into
 * vector instructions and both running values of a start stay in registers.
 *
 * usage: plain_loop SERIES STARTS LENGTH REPEATS
 * SERIES holds STARTS + LENGTH - 1 doubles of this machine's byte order, Wh an hour. Prints the median and the fastest
 * time in ms and the sum of all drawdowns, which the Java program prints too: both must have done the same work.
 */
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

#define SIDE 32

static void greatest_drawdowns(const double *restrict gain, int starts, int length, double *restrict needed) {
    int block = 0;
    for (; block + SIDE <= starts; block += SIDE) {
        double k[SIDE], most[SIDE];
        for (int j = 0; j < SIDE; j++) {
            k[j] = 0;
            most[j] = 0;
        }
        for (int i = 0; i < length; i++) {
            const double *g = gain + block + i;
            for (int j = 0; j < SIDE; j++) {
                double next = k[j] - g[j];
                k[j] = next > 0 ? next : 0;
                most[j] = most[j] > k[j] ? most[j] : k[j];
            }
        }
        for (int j = 0; j < SIDE; j++) {
            needed[block + j] = most[j];
        }
    }
    for (; block < starts; block++) {
        double k = 0, most = 0;
        for (int i = 0; i < length; i++) {
            double next = k - gain[block + i];
            k = next > 0 ? next : 0;
            most = most > k ? most : k;
        }
        needed[block] = most;
    }
}

static double now_ms(void) {
    struct timespec t;
    clock_gettime(CLOCK_MONOTONIC, &t);
    return t.tv_sec * 1e3 + t.tv_nsec / 1e6;
}

static int by_size(const void *a, const void *b) {
    double x = *(const double *) a, y = *(const double *) b;
    return (x > y) - (x < y);
}

int main(int argc, char **argv) {
    if (argc != 5) {
        fprintf(stderr, "usage: plain_loop SERIES STARTS LENGTH REPEATS\n");
        return 2;
    }
    int starts = atoi(argv[2]), length = atoi(argv[3]), repeats = atoi(argv[4]);
    size_t hours = (size_t) starts + length - 1;
    double *gain = malloc(hours * sizeof *gain);
    double *needed = malloc(starts * sizeof *needed);
    double *ms = malloc(repeats * sizeof *ms);
    FILE *file = fopen(argv[1], "rb");
    if (!gain || !needed || !ms || !file || fread(gain, sizeof *gain, hours, file) != hours) {
        fprintf(stderr, "plain_loop: cannot read %zu doubles from %s\n", hours, argv[1]);
        return 1;
    }
    fclose(file);
    greatest_drawdowns(gain, starts, length, needed);
    for (int r = 0; r < repeats; r++) {
        double from = now_ms();
        greatest_drawdowns(gain, starts, length, needed);
        __asm__ volatile("" : : "r"(needed) : "memory");
        ms[r] = now_ms() - from;
    }
    double sum = 0;
    for (int i = 0; i < starts; i++) {
        sum += needed[i];
    }
    qsort(ms, repeats, sizeof *ms, by_size);
    printf("%.4f %.4f %.6f\n", ms[repeats / 2], ms[0], sum);
    return 0;
}
