package main

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"strconv"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

func TestMain(m *testing.M) {
	testscript.Main(tidied{m}, map[string]func(){"heft": main})
}

// tidied takes the built program away when the tests are through.
type tidied struct{ m *testing.M }

func (t tidied) Run() int {
	code := t.m.Run()
	if build.path != "" {
		_ = os.RemoveAll(filepath.Dir(build.path))
	}
	return code
}

// TestScripts runs the real program as people and scripts would: each file in
// testdata/script is one story.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir: "../../testdata/script",
		Setup: func(e *testscript.Env) error {
			e.Setenv("HEFT_JOURNAL", e.WorkDir+"/journal.db")
			e.Setenv("TZ", "America/New_York")
			return nil
		},
		Cmds: map[string]func(*testscript.TestScript, bool, []string){
			"exits": exits, "field": field, "lines": lines,
		},
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
	})
}

// exits runs the program and checks its exit code: exits CODE heft ARGS.
func exits(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) < 2 {
		ts.Fatalf("usage: exits CODE PROGRAM ARGS")
	}
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	if err := ts.Exec(args[1], args[2:]...); err != nil {
		coded, ok := err.(interface{ ExitCode() int })
		if !ok {
			ts.Fatalf("%v did not run: %v", args[1:], err)
		}
		got = coded.ExitCode()
	}
	if got != want {
		ts.Fatalf("%v: exit code %d, want %d", args[1:], got, want)
	}
}

// field reads the JSON object on a line of stdout and checks a field:
// field LINE PATH VALUE. In a list a step of the path counts from 0. A value A..B is a range; "-" means absent.
func field(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 3 {
		ts.Fatalf("usage: field LINE PATH VALUE")
	}
	n, err := strconv.Atoi(args[0])
	ts.Check(err)
	out := strings.Split(strings.TrimSpace(ts.ReadFile("stdout")), "\n")
	if n < 1 || n > len(out) {
		ts.Fatalf("stdout has %d lines", len(out))
	}
	var v any
	ts.Check(json.Unmarshal([]byte(out[n-1]), &v))
	for _, key := range strings.Split(args[1], ".") {
		switch of := v.(type) {
		case map[string]any:
			v = of[key]
		case []any:
			i, err := strconv.Atoi(key)
			ts.Check(err)
			if v = nil; i < len(of) {
				v = of[i]
			}
		default:
			v = nil
		}
	}
	if !matches(v, args[2]) {
		ts.Fatalf("%s is %v, want %s", args[1], v, args[2])
	}
}

func matches(v any, want string) bool {
	if want == "-" {
		return v == nil
	}
	low, high, ranged := strings.Cut(want, "..")
	if f, ok := v.(float64); ok && ranged {
		a, err1 := strconv.ParseFloat(low, 64)
		b, err2 := strconv.ParseFloat(high, 64)
		return err1 == nil && err2 == nil && a <= f && f <= b
	}
	var w any
	if json.Unmarshal([]byte(want), &w) == nil {
		return reflect.DeepEqual(v, w)
	}
	return fmt.Sprint(v) == want
}

// lines checks how many lines stdout has: lines N, or lines A..B.
func lines(ts *testscript.TestScript, neg bool, args []string) {
	if neg || len(args) != 1 {
		ts.Fatalf("usage: lines N")
	}
	n := strings.Count(ts.ReadFile("stdout"), "\n")
	low, high, ranged := strings.Cut(args[0], "..")
	if !ranged {
		high = low
	}
	a, err := strconv.Atoi(low)
	ts.Check(err)
	b, err := strconv.Atoi(high)
	ts.Check(err)
	if n < a || n > b {
		ts.Fatalf("stdout has %d lines, want %s", n, args[0])
	}
}
