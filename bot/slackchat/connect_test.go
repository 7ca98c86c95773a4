package slackchat_test

import (
	"testing"

	"heft/bot/standin"
)

// What is asked while the desk and the journal are still being made waits, and
// is answered.
func TestAQuestionWaitsOnTheSocketUntilTheDeskIsThere(t *testing.T) {
	r := prepare(t, standin.Options{})
	desk := r.clerk.Desk
	r.clerk.Desk = nil
	if err := r.chat.Connect(t.Context()); err != nil {
		t.Fatal(err)
	}
	r.await(func() bool { return r.Sockets() == 1 })
	asked := r.ask(standin.Yard, question)
	r.clerk.Desk = desk
	r.run()
	r.answered(asked)
	if n := r.Sockets(); n != 1 {
		t.Errorf("%d sockets, want the one that was opened first", n)
	}
}

func TestHangingUpClosesASocketThatNobodyRan(t *testing.T) {
	r := prepare(t, standin.Options{})
	r.chat.HangUp() // there is none
	if err := r.chat.Connect(t.Context()); err != nil {
		t.Fatal(err)
	}
	r.await(func() bool { return r.Sockets() == 1 })
	r.chat.HangUp()
	r.await(func() bool { return r.Sockets() == 0 })
	r.chat.HangUp() // again
}
