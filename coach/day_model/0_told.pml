/* How SPIN's checker tells what it finds: each situation once, under a number, and each step by the
 * numbers before and after it. In C, since Promela cannot write; it decides nothing.
 */

c_decl {
  static long long *told_rows;       /* the situations, one after the other */
  static int *told_slots;            /* where to find one: its number, 0 for none */
  static long long told_kept[TOLD_WIDTH];   /* one situation, to come back to within the same step */
  static int told_rows_there, told_rows_room, told_slots_there;

  static unsigned told_place(const long long *row)
  {
    unsigned long long hash = 1469598103934665603ULL;
    int n;
    for (n = 0; n < TOLD_WIDTH; n++)
      hash = (hash ^ (unsigned long long) row[n]) * 1099511628211ULL;
    unsigned place = (unsigned) (hash >> 20) & (told_slots_there - 1);
    while (told_slots[place] != 0 && memcmp(told_rows + (long) (told_slots[place] - 1) * TOLD_WIDTH, row,
           TOLD_WIDTH * sizeof(long long)) != 0)
      place = (place + 1) & (told_slots_there - 1);
    return place;
  }

  static void told_more_room(void)
  {
    int n;
    told_rows_room = told_rows_room ? 2 * told_rows_room : 65536;
    told_slots_there = 4 * told_rows_room;
    told_rows = (long long *) realloc(told_rows, (size_t) told_rows_room * TOLD_WIDTH * sizeof(long long));
    free(told_slots);
    told_slots = (int *) calloc((size_t) told_slots_there, sizeof(int));
    if (told_rows == 0 || told_slots == 0) { printf("out of memory for what is told\n"); exit(1); }
    for (n = 0; n < told_rows_there; n++)
      told_slots[told_place(told_rows + (long) n * TOLD_WIDTH)] = n + 1;
  }

  static int number_of(const long long *row)
  {
    int n;
    if (told_rows_there == told_rows_room) told_more_room();
    unsigned place = told_place(row);
    if (told_slots[place] != 0) return told_slots[place];
    memcpy(told_rows + (long) told_rows_there * TOLD_WIDTH, row, TOLD_WIDTH * sizeof(long long));
    told_slots[place] = ++told_rows_there;
    printf("@");
    for (n = 0; n < TOLD_WIDTH; n++) printf(n ? " %lld" : "%lld", row[n]);
    printf("\n");
    return told_rows_there;
  }
}
