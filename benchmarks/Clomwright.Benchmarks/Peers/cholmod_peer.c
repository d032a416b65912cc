/* CHOLMOD beside Clomwright: reads a matrix once, then factorises and solves it whenever told to.
   cholmod_peer MATRIX SOLUTION; each line on standard input is an ordering: amd, metis or nesdis.
   Answers: analyze, factorize, solve (wall ms), processor time of all three (ms), peak memory of CHOLMOD and of the process (bytes). */
#include <cholmod.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

static double now(clockid_t clock) {
  struct timespec t;
  clock_gettime(clock, &t);
  return t.tv_sec * 1e3 + t.tv_nsec / 1e6;
}

static void take(void *to, size_t size, size_t count, FILE *file) {
  if (fread(to, size, count, file) != count) exit(3);
}

static double peak(void) {
  char line[256];
  double kilobytes = 0;
  FILE *file = fopen("/proc/self/status", "r");
  while (file && fgets(line, sizeof line, file)) sscanf(line, "VmHWM: %lf", &kilobytes);
  if (file) fclose(file);
  return 1024 * kilobytes;
}

int main(int count, char **words) {
  if (count != 3) return 2;
  FILE *file = fopen(words[1], "rb");
  if (!file) return 2;
  int64_t n, entries;
  take(&n, 8, 1, file);
  take(&entries, 8, 1, file);
  cholmod_common c;
  cholmod_l_start(&c);
  c.supernodal = CHOLMOD_SUPERNODAL;
  cholmod_sparse *a = cholmod_l_allocate_sparse(n, n, entries, 1, 1, -1, CHOLMOD_REAL, &c);
  take(a->p, 8, n + 1, file);
  take(a->i, 8, entries, file);
  take(a->x, 8, entries, file);
  cholmod_dense *b = cholmod_l_allocate_dense(n, 1, n, CHOLMOD_REAL, &c);
  take(b->x, 8, n, file);
  fclose(file);
  char word[32];
  while (scanf("%31s", word) == 1) {
    c.nmethods = 1;
    c.method[0].ordering = !strcmp(word, "amd") ? CHOLMOD_AMD : !strcmp(word, "metis") ? CHOLMOD_METIS : CHOLMOD_NESDIS;
    c.memory_usage = c.memory_inuse;
    double cpu = now(CLOCK_PROCESS_CPUTIME_ID), t0 = now(CLOCK_MONOTONIC);
    cholmod_factor *l = cholmod_l_analyze(a, &c);
    double t1 = now(CLOCK_MONOTONIC);
    cholmod_l_factorize(a, l, &c);
    double t2 = now(CLOCK_MONOTONIC);
    cholmod_dense *x = cholmod_l_solve(CHOLMOD_A, l, b, &c);
    double t3 = now(CLOCK_MONOTONIC);
    cpu = now(CLOCK_PROCESS_CPUTIME_ID) - cpu;
    printf("%.4f %.4f %.4f %.4f %.0f %.0f\n", t1 - t0, t2 - t1, t3 - t2, cpu, (double)c.memory_usage, peak());
    fflush(stdout);
    file = fopen(words[2], "wb");
    fwrite(x->x, 8, n, file);
    fclose(file);
    cholmod_l_free_dense(&x, &c);
    cholmod_l_free_factor(&l, &c);
  }
  return 0;
}
