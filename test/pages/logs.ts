/** An evening's log, invented for these tests: a hold with pours, a mis-read reading and parts. */
export const evening = `time,temp F,water fl oz,remark
7:40 pm,289,,boils
7:46 pm,292,,parts in
7:50 pm,294,,
7:51 pm,,24,
7:55 pm,291,,
8:00 pm,293,,
8:01 pm,,24,
8:06 pm,291,,
8:11 pm,294,,
8:12 pm,,24,
8:16 pm,291,,
8:21 pm,293,,parts out
8:24 pm,294,,end
`;

/** The same kind of evening as a table copied out of a page: tabs, minutes and seconds, metric. */
export const copiedRows = `time\t°C\twater ml
0:00\t143,0\t
6:00\t144,4\t
10:00\t145,2\t
11:00\t\t600
15:00\t143,9\t
20:00\t145,0\t
21:00\t\t600
26:00\t144,0\t
31:00\t145,3\t
`;
