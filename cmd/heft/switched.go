package main

import (
	"context"

	"heft/bot/standin"
)

// switched is a bot that can be switched off and on again while its workspace
// stays, as when the machine it runs on loses power.
type switched struct {
	space *standin.Workspace
	run   func(context.Context) error
	off   chan chan struct{} // each is closed when the bot is off
}

// stayOn runs the bot, and runs it again each time it was switched off, until
// it is told to stop or the bot fails.
func (b *switched) stayOn(ctx context.Context) error {
	for {
		on, off := context.WithCancel(ctx)
		ended := make(chan error, 1)
		go func() { ended <- b.run(on) }()
		select {
		case err := <-ended:
			off()
			return err
		case done := <-b.off:
			off()
			if err := <-ended; err != nil {
				return err
			}
			if b.space.Await(ctx, func() bool { return b.space.Sockets() == 0 }) != nil {
				return nil // told to stop while it was off
			}
			close(done)
		}
	}
}

// restart switches the bot off and on, and waits until it is there again.
func (b *switched) restart(ctx context.Context) error {
	done := make(chan struct{})
	select {
	case b.off <- done:
	case <-ctx.Done():
		return ctx.Err()
	}
	select {
	case <-done:
	case <-ctx.Done():
		return ctx.Err()
	}
	return b.space.Await(ctx, func() bool { return b.space.Sockets() > 0 })
}
