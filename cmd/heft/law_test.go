package main

import (
	"encoding/json"
	"errors"
	"io"
	"os/exec"
	"slices"
	"strings"
	"testing"
)

type rule struct {
	room, must string
	direct     bool
	why        string
}

// holdsFor says whether a package is the rule's room, or below it.
func (l rule) holdsFor(path string) bool {
	below, all := strings.CutSuffix(l.room, "/")
	return path == below || all && strings.HasPrefix(path, l.room)
}

// law says which room may not know which, and why. A room is a package or,
// with a slash at its end, all packages below it. What is forbidden holds for
// imports through others too, unless direct is set: fmt itself pulls in os
// and time, so the standard library is judged by what a room asks for.
var law = []rule{
	{"heft/calc/", "heft/parser", false, "chat words must not reach formulas"},
	{"heft/calc/", "heft/bot", false, "formulas know nothing of who asks"},
	{"heft/calc/", "os", true, "a formula does no I/O"},
	{"heft/calc/", "io", true, "a formula does no I/O"},
	{"heft/calc/", "time", true, "a formula has no clock"},
	{"heft/calc/", "context", true, "a formula has nothing to wait for"},
	{"heft/calc/", "log/slog", true, "a formula returns errors, it does not log"},
	{"heft/calc/", "net/http", false, "a formula does no I/O"},
	{"heft/calc/unit", "heft/calc/wood", false, "quantities stand below everything"},
	{"heft/calc/unit", "heft/calc", false, "quantities stand below everything"},
	{"heft/calc/wood", "heft/calc", false, "the table does not know its users"},
	{"heft/parser/", "heft/calc", false, "the parser reads, it does not calculate"},
	{"heft/parser/", "heft/bot", false, "words flow one way"},
	{"heft/parser/language", "heft/parser", false, "the files do not know who reads them"},
	{"heft/parser/language", "heft/calc/unit", false, "the files are words, not quantities"},
	{"heft/parser/", "os", true, "the same text is read the same everywhere"},
	{"heft/parser/", "time", true, "the same text is read the same at any time"},
	{"heft/parser/", "log/slog", true, "the parser returns errors, it does not log"},
	{"heft/bot", "github.com/slack-go/slack", false, "transport stays in bot/slackchat"},
	{"heft/bot", "github.com/patrickmn/go-cache", false, "memory stays in bot/seen"},
	{"heft/bot", "modernc.org/sqlite", false, "the driver stays in bot/journal"},
	{"heft/bot", "os", true, "the desk does no I/O"},
	{"heft/bot/slackchat", "heft/parser", true, "transports know no grammar"},
	{"heft/bot/slackchat", "heft/calc", true, "transports know no formulas"},
	{"heft/bot/slackchat", "heft/bot/journal", false, "a transport meets the journal through the clerk"},
	{"heft/bot/slackchat", "heft/bot/keyring", false, "a transport is handed its tokens"},
	{"heft/bot/keyring", "github.com/slack-go/slack", false, "the tokens' keeper knows no transport"},
	{"heft/bot/slackchat", "heft/bot/picture", false, "a transport is handed its drawer"},
	{"heft/bot/picture", "heft/parser", true, "the drawer knows no grammar"},
	{"heft/bot/picture", "heft/calc", true, "the drawer knows no formulas"},
	{"heft/bot/terminal", "github.com/slack-go/slack", false, "two transports do not know each other"},
	{"heft/bot/terminal", "heft/parser", true, "transports know no grammar"},
	{"heft/bot/terminal", "heft/calc", true, "transports know no formulas"},
	{"heft/bot/standin", "heft/bot", false, "the stand-in does not know what it serves"},
	{"heft/bot/standin", "github.com/slack-go/slack", false, "the stand-in reads the protocol by itself"},
	{"heft/bot/practice", "heft/bot", false, "the page knows the workspace, not who answers in it"},
	{"heft/bot/seen", "heft/parser", true, "memory knows no grammar"},
	{"heft/bot/seen", "heft/calc", true, "memory knows no formulas"},
	{"heft/bot/journal", "github.com/slack-go/slack", false, "the journal knows no transport"},
	{"heft/bot/journal", "heft/parser", true, "the journal keeps what it is given"},
	{"heft/bot/journal", "heft/calc", true, "the journal keeps what it is given"},
	{"heft/bot/sheet", "heft/calc", true, "a sheet shows what was logged"},
	{"heft/bot/sheet", "heft/bot/journal", false, "a sheet is given its entries"},
}

// The parser shares the quantities with the calculator, and nothing else: it
// knows spellings, not densities.
func TestParserAndCalculatorShareOnlyUnits(t *testing.T) {
	for _, r := range list(t) {
		for _, d := range r.Deps {
			if within(r.ImportPath, "heft/parser") && strings.HasPrefix(d, "heft/") && d != "heft/calc/unit" && !within(d, "heft/parser") {
				t.Errorf("%s must not import %s", r.ImportPath, d)
			}
		}
	}
}

// floors are the rooms of the parser from the ground up: each may know those named
// before it, and none that comes after.
var floors = []string{
	"language", "", "scan", "lexicon", "reading", "gear", "stops", "places", "bounds", "sizes",
	"turning", "asking", "heights", "lines", "pulls", "senses", "talk", "reader",
}

func TestParserIsBuiltFromTheGroundUp(t *testing.T) {
	floor := map[string]int{}
	for i, name := range floors {
		floor[strings.TrimSuffix("heft/parser/"+name, "/")] = i
	}
	for _, r := range list(t) {
		if !within(r.ImportPath, "heft/parser") {
			continue
		}
		at, ok := floor[r.ImportPath]
		if !ok {
			t.Errorf("%s has no floor", r.ImportPath)
		}
		for _, d := range r.Imports {
			if within(d, "heft/parser") && floor[d] > at {
				t.Errorf("%s must not import %s, which stands on it", r.ImportPath, d)
			}
		}
	}
}

// within says whether a package is a room or below it.
func within(path, room string) bool { return path == room || strings.HasPrefix(path, room+"/") }

type listed struct {
	ImportPath string
	Imports    []string
	Deps       []string
}

func TestLaw(t *testing.T) {
	rooms := list(t)
	for _, l := range law {
		found := false
		for _, r := range rooms {
			if !l.holdsFor(r.ImportPath) {
				continue
			}
			found = true
			from := r.Deps
			if l.direct {
				from = r.Imports
			}
			if slices.Contains(from, l.must) {
				t.Errorf("%s must not import %s: %s", r.ImportPath, l.must, l.why)
			}
		}
		if !found {
			t.Errorf("the law speaks of %s, which is no room of the house", l.room)
		}
	}
}

func list(t *testing.T) []listed {
	t.Helper()
	out, err := exec.Command("go", "list", "-json=ImportPath,Imports,Deps", "heft/...").Output()
	if err != nil {
		t.Fatal(err)
	}
	var rooms []listed
	for d := json.NewDecoder(strings.NewReader(string(out))); ; {
		var r listed
		if err := d.Decode(&r); errors.Is(err, io.EOF) {
			return rooms
		} else if err != nil {
			t.Fatal(err)
		}
		rooms = append(rooms, r)
	}
}
