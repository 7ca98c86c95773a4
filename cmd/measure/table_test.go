package main

import (
	"strings"
	"testing"
	"time"
)

// steady is a round of easy numbers. By hand: Heft's latency is 0.9 ms
// beyond echo's, three of the disk's 0.3 ms; its replies are 3000 of 2000,
// 1.5; the journal's rows 30,000 of 2,500, 12; the desk's time 0.06 of 0.6
// ms, 0.1; the memory 27 of 20 MB, 1.35; the start 24 of 20 ms, 1.2. The
// second echo is off by 5, 4, 2 and 10 in a hundred.
func steady() round {
	return round{
		bots: [3]sample{
			echoBot:    {first: 20 * time.Millisecond, p50: 600 * time.Microsecond, perSecond: 2000, peak: 20e6},
			heftBot:    {first: 24 * time.Millisecond, p50: 1500 * time.Microsecond, perSecond: 3000, peak: 27e6},
			controlBot: {first: 22 * time.Millisecond, p50: 570 * time.Microsecond, perSecond: 2080, peak: 19.6e6},
		},
		disk: written{p50: 300 * time.Microsecond, perSecond: 2500},
		rows: 30_000,
		desk: 60 * time.Microsecond,
	}
}

func TestTableOfHandWorkedRounds(t *testing.T) {
	slow, fast := steady(), steady()
	// Only the first row moves: 1.8 ms beyond echo's is 6 of the disk's
	// writes, and 0.3 ms is 1.
	slow.bots[heftBot].p50 = 2400 * time.Microsecond
	fast.bots[heftBot].p50 = 900 * time.Microsecond
	got := cells(table([]round{slow, steady(), fast}))
	want := [][]string{
		{"3", "1.5", "3", "1–6", "0.950"},
		{"1.0", "2.0", "1.5", "1.5–1.5", "1.040"},
		{"7", "15", "12", "12–12", "–"},
		{"0.2", "0.05", "0.1", "0.1–0.1", "–"},
		{"1.5", "1.25", "1.35", "1.35–1.35", "0.980"},
		{"1.5", "1.1", "1.2", "1.2–1.2", "1.100: this run says nothing"},
	}
	if len(got) != len(want) {
		t.Fatalf("%d rows, want %d", len(got), len(want))
	}
	for i, line := range got {
		if strings.Join(line[1:], "|") != strings.Join(want[i], "|") {
			t.Errorf("%s: %v, want %v", line[0], line[1:], want[i])
		}
	}
}

// TestControlIsTheMedian: one disturbed round of three does not void a row,
// two do.
func TestControlIsTheMedian(t *testing.T) {
	disturbed := steady()
	disturbed.bots[controlBot].perSecond = 1400 // 0.7 of the other echo
	for _, c := range []struct {
		rounds []round
		want   string
	}{
		{[]round{steady(), disturbed, steady()}, "1.040"},
		{[]round{disturbed, disturbed, steady()}, "0.700: this run says nothing"},
	} {
		if got := cells(table(c.rounds))[1][5]; got != c.want {
			t.Errorf("the control says %q, want %q", got, c.want)
		}
	}
}

func TestTableIsAligned(t *testing.T) {
	lines := strings.Split(strings.TrimSpace(table([]round{steady()})), "\n")
	for _, line := range lines {
		if len([]rune(line)) != len([]rune(lines[0])) || strings.Count(line, "|") != 7 {
			t.Errorf("%q does not stand below %q", line, lines[0])
		}
	}
}

// cells are a table's rows without its head.
func cells(table string) (rows [][]string) {
	for i, line := range strings.Split(strings.TrimSpace(table), "\n") {
		if i < 2 {
			continue
		}
		var row []string
		for _, cell := range strings.Split(strings.Trim(line, "|"), "|") {
			row = append(row, strings.TrimSpace(cell))
		}
		rows = append(rows, row)
	}
	return rows
}
