package main

import (
	"fmt"
	"os"
	"os/exec"
	"path"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/moby/buildkit/frontend/dockerfile/instructions"
	"github.com/moby/buildkit/frontend/dockerfile/linter"
	"github.com/moby/buildkit/frontend/dockerfile/parser"
)

// image is a container file as its builder reads it, and what is wrong with
// it.
type image struct {
	stages []instructions.Stage
	wrong  []string
}

func (i *image) faulty(format string, args ...any) {
	i.wrong = append(i.wrong, fmt.Sprintf(format, args...))
}

// last is the last instruction of a kind in the stage that is shipped: the
// one that holds.
func last[T instructions.Command](i *image) (found T) {
	for _, c := range i.stages[len(i.stages)-1].Commands {
		if c, ok := c.(T); ok {
			found = c
		}
	}
	return found
}

// read parses a container file; the parser's own warnings are faults.
func read(text string) (*image, error) {
	i := &image{}
	parsed, err := parser.Parse(strings.NewReader(text))
	if err != nil {
		return nil, err
	}
	for _, w := range parsed.Warnings {
		i.faulty("%s", w.Short)
	}
	lint := linter.New(&linter.Config{Warn: func(rule, _, _, message string, _ []parser.Range) {
		i.faulty("%s: %s", rule, message)
	}})
	stages, before, err := instructions.Parse(parsed.AST, lint)
	if err != nil {
		return nil, err
	}
	i.stages = stages
	for n := range before {
		i.argument(&before[n])
	}
	return i, nil
}

// The looks of what has no place in an image, where everybody who has the
// image reads it.
var (
	secretName  = regexp.MustCompile(`(?i)TOKEN|SECRET|PASSW|CREDENTIAL|(^|_)KEY($|_)`)
	secretValue = regexp.MustCompile(`xox[a-z]-|xapp-|[0-9a-f]{32}`)
	remote      = regexp.MustCompile(`(?i)^[a-z][a-z0-9+.-]*://|^git@`)
	nobody      = regexp.MustCompile(`^[1-9][0-9]*:[1-9][0-9]*$`)
)

func (i *image) value(name, value string) {
	if secretName.MatchString(name) || secretValue.MatchString(value) {
		i.faulty("%s is a secret", name)
	}
}

func (i *image) argument(c *instructions.ArgCommand) {
	for _, a := range c.Args {
		i.value(a.Key, a.ValueString())
	}
}

// everywhere looks at what holds for each stage.
func (i *image) everywhere() {
	for n, s := range i.stages {
		for _, c := range s.Commands {
			switch c := c.(type) {
			case *instructions.AddCommand:
				if slices.ContainsFunc(c.SourcePaths, remote.MatchString) {
					i.faulty("%q is fetched by whoever builds, and checked by nobody", c.SourcePaths)
				}
			case *instructions.EnvCommand:
				for _, e := range c.Env {
					i.value(e.Key, e.Value)
				}
			case *instructions.ArgCommand:
				i.argument(c)
			case *instructions.CopyCommand:
				if _, earlier := instructions.HasStage(i.stages[:n], c.From); c.From != "" && !earlier {
					i.faulty("%q comes from %q, which is no earlier stage", c.SourcePaths, c.From)
				}
			}
		}
	}
}

// shipped looks at the stage that is shipped: nothing but the program, which
// runs as nobody and is told to stop by name.
func (i *image) shipped() {
	s := i.stages[len(i.stages)-1]
	if s.BaseName != "scratch" {
		i.faulty("it is built on %s", s.BaseName)
	}
	if last[*instructions.RunCommand](i) != nil {
		i.faulty("something is run where there is no shell")
	}
	user := last[*instructions.UserCommand](i)
	if user == nil || !nobody.MatchString(user.User) {
		i.faulty("it runs as root, or as a name that nothing there knows")
	}
	if e := last[*instructions.EntrypointCommand](i); e == nil || e.PrependShell || !slices.Equal(e.CmdLine, []string{"/heft"}) {
		i.faulty("the program is not what is started")
	}
	if c := last[*instructions.CmdCommand](i); c == nil || c.PrependShell || !slices.Equal(c.CmdLine, []string{"serve"}) {
		i.faulty("the program does not serve")
	}
	if c := last[*instructions.StopSignalCommand](i); c == nil || c.Signal != "SIGTERM" {
		i.faulty("it is not stopped in order")
	}
	if !slices.ContainsFunc(s.Commands, func(c instructions.Command) bool {
		from, ok := c.(*instructions.CopyCommand)
		return ok && slices.Contains(from.SourcePaths, "/etc/ssl/certs/ca-certificates.crt") && from.DestPath == "/etc/ssl/certs/"
	}) {
		i.faulty("it knows no authority's certificates")
	}
	if user != nil {
		i.keeps(s, user.User)
	}
}

// keeps looks at the one folder that is written to: it is the journal's, a
// volume, and its user's.
func (i *image) keeps(s instructions.Stage, user string) {
	var folder string
	if env := last[*instructions.EnvCommand](i); env != nil {
		for _, e := range env.Env {
			if e.Key == "HEFT_JOURNAL" {
				folder = path.Dir(e.Value)
			}
		}
	}
	if v := last[*instructions.VolumeCommand](i); v == nil || !slices.Equal(v.Volumes, []string{folder}) {
		i.faulty("the journal's folder %q is no volume", folder)
	}
	if !slices.ContainsFunc(s.Commands, func(c instructions.Command) bool {
		made, ok := c.(*instructions.CopyCommand)
		return ok && made.DestPath == folder && made.Chown == user
	}) {
		i.faulty("the journal's folder %q is not the user's", folder)
	}
}

// packages looks at whether all of the program is there to be built.
func (i *image) packages(needs []string) {
	var from []string
	for _, c := range i.stages[0].Commands {
		if c, ok := c.(*instructions.CopyCommand); ok && c.From == "" && len(c.SourcePaths) == 1 && c.SourcePaths[0] == c.DestPath {
			from = append(from, c.DestPath)
		}
	}
	for _, p := range needs {
		room, _, _ := strings.Cut(strings.TrimPrefix(p, "heft/"), "/")
		if strings.HasPrefix(p, "heft/") && !slices.Contains(from, room) {
			i.faulty("%s is not copied", p)
		}
	}
}

// judged is what is wrong with a container file.
func judged(text string, needs []string) []string {
	i, err := read(text)
	if err != nil {
		return []string{err.Error()}
	}
	i.everywhere()
	i.shipped()
	i.packages(needs)
	return i.wrong
}

// spoilings each put one fault into the container file.
var spoilings = []struct{ was, is, want string }{
	{"FROM scratch\n", "FROM docker.io/library/debian\n", "it is built on"},
	{"USER 65532:65532\n", "", "it runs as root"}, {"USER 65532:65532\n", "USER 65532:65532\nUSER 0:0\n", "it runs as root"},
	{"ENTRYPOINT [\"/heft\"]", "ENTRYPOINT /heft", "the program is not"}, {"CMD [\"serve\"]", "CMD serve", "does not serve"},
	{"COPY bot bot\n", "", "heft/bot is not copied"}, {"COPY bot bot\n", "# COPY bot bot\n", "heft/bot is not copied"},
	{"WORKDIR /src\n", "WORKDIR /src\nADD https://example.org/x /x\n", "is fetched"},
	{"WORKDIR /src\n", "WORKDIR /src\nARG APP_TOKEN\n", "is a secret"}, {"FROM docker.io", "ARG app_secret=1\nFROM docker.io", "is a secret"},
	{"ENV HEFT_JOURNAL", "ENV HEFT_KEY=1\nENV HEFT_JOURNAL", "is a secret"},
	{"--from=build /heft", "--from=made /heft", "no earlier stage"}, {"USER 65532", "RUN true\nUSER 65532", "something is run"},
	{"STOPSIGNAL SIGTERM\n", "", "stopped in order"}, {"/var/lib/heft/journal.db", "/var/lib/journal.db", "is no volume"},
	{"--chown=65532:65532 ", "", "not the user's"}, {"/etc/ssl/certs/\n", "/certs/\n", "certificates"},
	{"VOLUME ", "VOLUMES ", "unknown instruction"}, {" AS build\n", " as build\n", "FromAsCasing"},
}

// TestContainerFile reads the container file with the parser of a builder:
// the image is built from every package of the program, holds nothing besides,
// and runs as nobody, from a folder of its own. Each spoilt file shows that
// its fault would be seen.
func TestContainerFile(t *testing.T) {
	file, err := os.ReadFile("../../deploy/Containerfile")
	if err != nil {
		t.Fatal(err)
	}
	out, err := exec.Command("go", "list", "-deps", "-f", "{{.ImportPath}}", ".").Output()
	if err != nil {
		t.Fatal(err)
	}
	text, needs := string(file), strings.Fields(string(out))
	if wrong := judged(text, needs); len(wrong) > 0 {
		t.Errorf("%q", wrong)
	}
	for _, c := range spoilings {
		spoilt := strings.Replace(text, c.was, c.is, 1)
		if spoilt == text {
			t.Fatalf("%q is not there", c.was)
		}
		if wrong := judged(spoilt, needs); !slices.ContainsFunc(wrong, func(w string) bool { return strings.Contains(w, c.want) }) {
			t.Errorf("%q in the place of %q: %q", c.is, c.was, wrong)
		}
	}
}
