/* The lumped cube of 45 cm (4 air changes an hour, lamp, two mistings of 60 g a day) by CVODE, BDF with a dense
   direct solver. Peer of src/Physics/Air for speed and agreement; no part of the program.

     cvode-headspace DAYS [FILE]

   Unknowns: air and glass and soil temperature, humidity ratio, film. It restarts where lamp or mist switch. It
   prints the error against rtol 1e-10 at full hours for each rtol, then the median of nine solves with the
   loosest rtol whose air is within 0.03 K and whose film is within 0.6 g. FILE takes air and film of rtol 1e-10
   at full hours, so that others can be held against the same reference. */
#include <cvode/cvode.h>
#include <math.h>
#include <nvector/nvector_serial.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sunlinsol/sunlinsol_dense.h>
#include <sunmatrix/sunmatrix_dense.h>
#include <time.h>

enum { UNKNOWNS = 5, AIR = 0, RATIO, GLASS, SOIL, FILM, SOLVES = 9, MAX_HOURS = 24 * 400 };
static const double DRY = 0.107888186, GLASS_AREA = 1.0125, SOIL_AREA = 0.2025, GLASS_HEAT = 9112.5,
                    SOIL_HEAT = 30375, RV = 461.524, EPS = 0.621945, PRESSURE = 101325, CPA = 1006, CPV = 1860,
                    CL = 4186, L0 = 2501000, KM = 1.0 / 360, CHANGES = 4.0 / 3600;
typedef struct { double lamp, mist; } Now;
typedef struct { double air[MAX_HOURS + 1], film[MAX_HOURS + 1], seconds; long steps; int failed; } Outcome;

static double saturation(double c) {
  double t = c + 273.15;
  return exp(-5.8002206e3 / t + 1.3914993 - 4.8640239e-2 * t + 4.1764768e-5 * t * t - 1.4452093e-8 * t * t * t +
             6.5459673 * log(t));
}

static int rhs(realtype t, N_Vector y, N_Vector ydot, void *user) {
  const Now *now = user;
  const double *v = N_VGetArrayPointer(y);
  double *d = N_VGetArrayPointer(ydot), ta = v[AIR], w = v[RATIO], tg = v[GLASS], ts = v[SOIL], m = v[FILM];
  double room = 21 + 2 * sin(2 * M_PI * (t / 3600 - 9) / 24), wr = 0.0078, flow = CHANGES * DRY;
  double pa = PRESSURE * w / (EPS + w);
  double e = SOIL_AREA * KM * (saturation(ts) - pa) / (RV * (0.5 * (ts + ta) + 273.15));
  double f = GLASS_AREA * KM * (pa - saturation(tg)) / (RV * (0.5 * (tg + ta) + 273.15));
  if (f < 0) f *= 1 - exp(-fmax(m, 0) / (0.005 * GLASS_AREA));
  double drip = fmax(0, m - 0.050 * GLASS_AREA) / 600;
  double hv_a = L0 + CPV * ta, hv_g = L0 + CPV * tg, hv_s = L0 + CPV * ts;
  d[AIR] = (flow * (CPA + wr * CPV) * (room - ta) + 3 * GLASS_AREA * (tg - ta) + 3 * SOIL_AREA * (ts - ta) +
            1 * now->lamp + (e > 0 ? CPV * e * (ts - ta) : 0) + (f < 0 ? -CPV * f * (tg - ta) : 0)) /
           (DRY * (CPA + w * CPV));
  d[RATIO] = (flow * (wr - w) + e - f) / DRY;
  d[GLASS] = (3 * GLASS_AREA * (ta - tg) + 5 * SOIL_AREA * (ts - tg) + 8 * GLASS_AREA * (room - tg) + 3 * now->lamp +
              f * ((f > 0 ? hv_a : hv_g) - CL * tg) + 0.3 * now->mist * CL * (20 - tg)) / GLASS_HEAT;
  d[SOIL] = (3 * SOIL_AREA * (ta - ts) + 5 * SOIL_AREA * (tg - ts) + 2 * SOIL_AREA * (room - ts) + 6 * now->lamp -
             e * ((e > 0 ? hv_s : hv_a) - CL * ts) + 0.7 * now->mist * CL * (20 - ts)) / SOIL_HEAT;
  d[FILM] = f - drip + 0.3 * now->mist;
  return 0;
}

static double next_switch(double hour) {
  static const double at[] = {8, 9, 9 + 1.0 / 60, 17, 17 + 1.0 / 60, 20, 24};
  double day = 24 * floor((hour + 1e-9) / 24);
  for (size_t i = 0; i < sizeof at / sizeof *at; i++)
    if (day + at[i] > hour + 1e-9) return day + at[i];
  return day + 24;
}

static Now state_at(double hour) {
  double h = hour - 24 * floor(hour / 24);
  Now now = {h >= 8 && h < 20 ? 1 : 0, (h >= 9 && h < 9 + 1.0 / 60) || (h >= 17 && h < 17 + 1.0 / 60) ? 1e-3 : 0};
  return now;
}

static double clock_seconds(void) {
  struct timespec t;
  clock_gettime(CLOCK_MONOTONIC, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

static void solve(int hours, double rtol, Outcome *o) {
  SUNContext context;
  double began = clock_seconds();
  memset(o, 0, sizeof *o);
  SUNContext_Create(NULL, &context);
  N_Vector y = N_VNew_Serial(UNKNOWNS, context), atol = N_VNew_Serial(UNKNOWNS, context);
  double *v = N_VGetArrayPointer(y), *a = N_VGetArrayPointer(atol);
  v[AIR] = v[GLASS] = v[SOIL] = 21, v[RATIO] = 0.0108756274, v[FILM] = 0;
  a[AIR] = a[GLASS] = a[SOIL] = 10 * rtol, a[RATIO] = 0.01 * rtol, a[FILM] = 0.01 * rtol;
  Now now = state_at(0);
  void *mem = CVodeCreate(CV_BDF, context);
  CVodeInit(mem, rhs, 0, y);
  CVodeSVtolerances(mem, rtol, atol);
  CVodeSetUserData(mem, &now);
  CVodeSetMaxNumSteps(mem, 1000000);
  SUNMatrix matrix = SUNDenseMatrix(UNKNOWNS, UNKNOWNS, context);
  SUNLinearSolver linear = SUNLinSol_Dense(y, matrix, context);
  CVodeSetLinearSolver(mem, linear, matrix);
  double t = 0, hour = 0;
  o->air[0] = v[AIR];
  while (hour < hours && !o->failed) {
    double until = fmin(next_switch(hour), fmin(floor(hour + 1 + 1e-9), hours));
    int is_switch = next_switch(hour) <= until + 1e-9;
    CVodeSetStopTime(mem, until * 3600);
    o->failed = CVode(mem, until * 3600, y, &t, CV_NORMAL) < 0;
    hour = until;
    if (fabs(hour - round(hour)) < 1e-9) {
      o->air[(int)round(hour)] = v[AIR];
      o->film[(int)round(hour)] = v[FILM];
    }
    if (is_switch && hour < hours) {
      long steps;
      CVodeGetNumSteps(mem, &steps);
      o->steps += steps;
      now = state_at(hour + 1e-9);
      CVodeReInit(mem, t, y);
    }
  }
  o->seconds = clock_seconds() - began;
  CVodeFree(&mem);
  SUNLinSolFree(linear);
  SUNMatDestroy(matrix);
  N_VDestroy(y);
  N_VDestroy(atol);
  SUNContext_Free(&context);
}

static int rising(const void *a, const void *b) {
  double x = *(const double *)a, y = *(const double *)b;
  return (x > y) - (x < y);
}

int main(int count, char **word) {
  static Outcome exact, one;
  int hours = 24 * (count > 1 ? atoi(word[1]) : 30);
  if (hours < 24 || hours > MAX_HOURS) return 2;
  solve(hours, 1e-10, &exact);
  if (count > 2) {
    FILE *f = fopen(word[2], "w");
    if (!f) return 2;
    for (int h = 0; h <= hours; h++) fprintf(f, "%.10f %.10e\n", exact.air[h], exact.film[h]);
    fclose(f);
  }
  static const double row[] = {1e-7, 1e-6, 1e-5, 1e-4, 1e-3};
  double chosen = row[0];
  for (size_t i = 0; i < sizeof row / sizeof *row; i++) {
    double kelvin = 0, grams = 0;
    solve(hours, row[i], &one);
    for (int h = 0; h <= hours; h++) {
      kelvin = fmax(kelvin, fabs(one.air[h] - exact.air[h]));
      grams = fmax(grams, 1e3 * fabs(one.film[h] - exact.film[h]));
    }
    printf("rtol %.0e air %.1e K film %.1e g steps %ld%s\n", row[i], kelvin, grams, one.steps,
           one.failed ? " FAILED" : "");
    if (!one.failed && kelvin <= 0.03 && grams <= 0.6) chosen = row[i];
  }
  double seconds[SOLVES];
  for (int i = 0; i < SOLVES; i++) {
    solve(hours, chosen, &one);
    seconds[i] = one.seconds;
  }
  qsort(seconds, SOLVES, sizeof *seconds, rising);
  printf("peer rtol %.0e steps %ld median %.3f best %.3f\n", chosen, one.steps, 1e3 * seconds[SOLVES / 2],
         1e3 * seconds[0]);
  return 0;
}
