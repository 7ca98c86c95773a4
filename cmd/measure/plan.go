package main

import (
	"flag"
	"fmt"
	"io"
)

// inFlight is how many questions, or rows, wait at any time under load.
const inFlight = 64

// plan is how much is measured.
type plan struct {
	rounds int
	starts int // of each bot in a round
	turns  int // that the bots take in a round; each has its share of what follows
	alone  int // questions in a round, one in flight
	crowd  int // questions in a round, 64 in flight
	rows   int // appended to a journal in a round
	writes int // of this disk in a round
	reads  int // times that the desk answers each of its questions in a round
}

// loaded is how many questions are asked under load for each one that is
// asked alone: they take about as long.
const loaded = 6

func parsePlan(args []string, usage io.Writer) (plan, error) {
	p := plan{starts: 15, turns: 20}
	flags := flag.NewFlagSet("measure", flag.ContinueOnError)
	flags.SetOutput(usage)
	rounds := flags.Int("rounds", 7, "rounds; the median of their ratios counts")
	questions := flags.Int("questions", 1500, fmt.Sprintf(
		"questions asked one at a time of each bot in a round; %d times as many with %d in flight", loaded, inFlight))
	quick := flags.Bool("quick", false, "see whether it runs: one short round, whose figures mean little")
	if err := flags.Parse(args); err != nil {
		return p, err
	}
	if *quick {
		*rounds, *questions, p.starts, p.turns = 1, 80, 1, 4
	}
	p.rounds, p.alone, p.crowd = *rounds, *questions, loaded**questions
	p.rows, p.writes, p.reads = p.crowd, p.alone, p.alone/10
	if flags.NArg() > 0 || p.rounds < 1 || p.reads < p.turns {
		err := fmt.Errorf("measure: at least 1 round and %d questions, and no other arguments", p.turns*10)
		fmt.Fprintln(usage, err)
		return p, err
	}
	return p, nil
}

// order is how the bots take turn i: there and back, so that each echo comes
// after Heft as often as the other.
func order(i int) [3]int {
	if i%2 == 0 {
		return [3]int{echoBot, heftBot, controlBot}
	}
	return [3]int{controlBot, heftBot, echoBot}
}
