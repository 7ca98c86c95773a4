package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os/exec"
	"path/filepath"
	"syscall"
	"time"

	"heft/bot/standin"
)

// The bots that are measured, as indices.
const (
	echoBot = iota
	heftBot
	controlBot // a second echo
)

const (
	startLimit = 30 * time.Second // from starting a bot to its first reply
	stopLimit  = 30 * time.Second
	driveLimit = 5 * time.Minute
)

// worker is a bot at work: a process with a workspace of its own.
type worker struct {
	name    string
	space   *standin.Workspace
	cmd     *exec.Cmd
	alive   context.Context // until the process ends
	ended   chan struct{}
	exit    error        // how it ended, from then on
	logged  bytes.Buffer // what it wrote, from then on
	asked   int
	journal string // Heft's
}

// channels are enough for no channel's list of messages to grow long.
var channels = func() (list []standin.Channel) {
	for i := range 32 {
		list = append(list, standin.Channel{ID: fmt.Sprintf("C0CREW%04d", i), Name: fmt.Sprintf("crew-%d", i)})
	}
	return list
}()

// launch starts a bot with an empty folder and returns it, with the time to
// its first reply: a question that waits for it in the workspace.
func (b *bench) launch(ctx context.Context, which int, dir string) (*worker, time.Duration, error) {
	space, err := standin.Start(standin.Options{Channels: channels})
	if err != nil {
		return nil, 0, err
	}
	w := &worker{name: "echo", space: space, cmd: exec.CommandContext(ctx, b.echo)}
	if which == heftBot {
		w.name, w.journal = "heft", filepath.Join(dir, "journal.db")
		w.cmd = exec.CommandContext(ctx, b.heft, "serve", "--journal", w.journal)
	}
	w.cmd.Env = []string{
		"SLACK_BOT_TOKEN=" + space.BotToken(), "SLACK_APP_TOKEN=" + space.AppToken(),
		"SLACK_API_URL=" + space.URL(), "HOME=" + dir,
	}
	w.cmd.Dir, w.cmd.Stderr, w.cmd.WaitDelay = dir, &w.logged, stopLimit
	waits := space.Say(channels[0].ID, "U0CREW0001", space.Mention()+" "+questions[0])
	began := time.Now()
	if err := w.start(ctx); err != nil {
		return nil, 0, errors.Join(err, space.Close())
	}
	ctx, cancel := context.WithTimeout(w.alive, startLimit)
	defer cancel()
	reply, err := space.Reply(ctx, waits)
	if err != nil {
		return nil, 0, errors.Join(w.failed(err), w.kill())
	}
	w.asked = 1
	return w, reply.At.Sub(began), nil
}

// start starts the process and waits for its end in the background.
func (w *worker) start(ctx context.Context) error {
	if err := w.cmd.Start(); err != nil {
		return err
	}
	alive, cancel := context.WithCancel(ctx)
	w.alive, w.ended = alive, make(chan struct{})
	go func() {
		defer cancel()
		w.exit = w.cmd.Wait()
		close(w.ended)
	}()
	return nil
}

// failed adds to an error whose it is and, where the process has ended, how.
func (w *worker) failed(err error) error {
	select {
	case <-w.ended:
		return fmt.Errorf("%s has ended (%s): %w\n%s", w.name, w.cmd.ProcessState, err, w.logged.String())
	default:
		return fmt.Errorf("%s: %w", w.name, err)
	}
}

// drive asks so many questions, so many at a time.
func (w *worker) drive(total, atOnce int) (standin.Stats, error) {
	ctx, cancel := context.WithTimeout(w.alive, driveLimit)
	defer cancel()
	names := make([]string, len(channels))
	for i, c := range channels {
		names[i] = c.ID
	}
	stats, err := w.space.Drive(ctx, standin.DriveOptions{
		Total: total, InFlight: atOnce, Channels: names,
		Text: func(i int) string { return questions[i%len(questions)] },
	})
	if err != nil {
		return stats, w.failed(err)
	}
	w.asked += total
	return stats, nil
}

// kill ends the process at once, and its workspace.
func (w *worker) kill() error {
	_ = w.cmd.Process.Kill() // it may have ended
	<-w.ended
	return w.space.Close()
}

// stop asks the process to end in order, and fails where it did not.
func (w *worker) stop() error {
	limit := time.NewTimer(stopLimit)
	defer limit.Stop()
	err := w.cmd.Process.Signal(syscall.SIGTERM)
	select {
	case <-w.ended:
	case <-limit.C:
		err = errors.Join(err, errors.New("it was asked to end, and did not"))
	}
	if err = errors.Join(err, w.kill(), w.exit); err != nil {
		return w.failed(err)
	}
	return nil
}
