package slackchat_test

import (
	"os"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/slack-go/slack"
	"go.yaml.in/yaml/v3"

	"heft/bot/slackchat"
	"heft/bot/standin"
)

func manifest(t *testing.T) slack.Manifest {
	t.Helper()
	f, err := os.Open("../../deploy/manifest.yaml")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	var m slack.Manifest
	d := yaml.NewDecoder(f)
	d.KnownFields(true) // a misspelt setting is an error
	if err := d.Decode(&m); err != nil {
		t.Fatal(err)
	}
	return m
}

func TestManifest(t *testing.T) {
	m := manifest(t)
	s, f := m.Settings, m.Features
	if !s.SocketModeEnabled || s.Interactivity == nil || !s.Interactivity.IsEnabled || s.TokenRotationEnabled {
		t.Errorf("settings: %+v", s)
	}
	if !f.AppHome.HomeTabEnabled || !f.AppHome.MessagesTabEnabled || f.AppHome.MessagesTabReadOnlyEnabled || f.BotUser.DisplayName == "" {
		t.Errorf("features: %+v", f)
	}
	if len(m.OAuthConfig.Scopes.User) > 0 {
		t.Errorf("scopes over people: %q", m.OAuthConfig.Scopes.User)
	}
	// Limits from memory: 35 and 140 characters, and 174 to 4,000.
	if len(f.SlashCommands) != 1 || f.SlashCommands[0].Command != slackchat.Command || !f.SlashCommands[0].ShouldEscape ||
		len(f.Shortcuts) != 1 || f.Shortcuts[0].CallbackID != slackchat.ShortcutID {
		t.Errorf("commands and shortcuts: %+v, %+v", f.SlashCommands, f.Shortcuts)
	}
	if got := m.OAuthConfig.Scopes.Bot; !slices.Equal(slices.Sorted(slices.Values(got)), slackchat.Scopes) {
		t.Errorf("the manifest asks for %q, the check for %q", got, slackchat.Scopes)
	}
	d := m.Display
	if len(d.Name) > 35 || len(d.Description) > 140 || len(d.LongDescription) < 174 || len(d.LongDescription) > 4000 {
		t.Errorf("lengths: %d, %d, %d", len(d.Name), len(d.Description), len(d.LongDescription))
	}
}

// With the manifest's scopes and subscriptions everything works, and without
// any one of them something no longer does.
func TestManifestAsksForTheLeast(t *testing.T) { bothWays(t, manifestAsksForTheLeast) }

func manifestAsksForTheLeast(t *testing.T, via way) {
	m := manifest(t)
	scopes, events := m.OAuthConfig.Scopes.Bot, m.Settings.EventSubscriptions.BotEvents
	r := prepare(t, standin.Options{Scopes: scopes, Events: events}, via, drawing)
	slackchat.SetAfter(r.chat, atOnce)
	r.run()
	r.pictured(r.ask(standin.Yard, seen))
	for _, call := range r.Calls("reactions.add") {
		if call.Error != "" {
			t.Error(call.Error)
		}
	}
	r.answered(r.Say(standin.Direct, crew, question))

	for _, gone := range slices.Concat(scopes, events) {
		t.Run("without "+gone, func(t *testing.T) {
			other := func(s string) bool { return s == gone }
			r := prepare(t, standin.Options{
				Scopes: slices.DeleteFunc(slices.Clone(scopes), other),
				Events: slices.DeleteFunc(slices.Clone(events), other),
			}, via, drawing)
			slackchat.SetPause(r.chat, (&waits{}).pause)
			slackchat.SetAfter(r.chat, atOnce)
			r.run()
			mention, direct := r.ask(standin.Yard, seen), r.Say(standin.Direct, crew, question)
			_, refused := r.Command(standin.Yard, crew, "/heft", question)
			whole := len(mention.Events) > 0 && len(direct.Events) > 0 && refused == nil && r.Join(standin.Away, r.BotUser()) != "" && r.OpenHome(crew) != ""
			for _, asked := range []standin.Message{mention, direct} {
				if len(asked.Events) > 0 {
					whole = r.settled(asked).Failure == "" && whole
				}
			}
			if whole {
				lost := func() bool { return strings.Contains(r.logs.text(), "the picture was not posted") }
				r.await(func() bool { return len(r.own(mention)) == 2 || lost() })
				whole = !lost()
			}
			for _, call := range r.Calls("reactions.add") {
				whole = whole && call.Error == ""
			}
			if whole {
				t.Errorf("%s is not needed", gone)
			}
		})
	}
}

// atOnce takes every answer for one that is long in coming.
func atOnce(_ time.Duration, f func()) func() bool {
	f()
	return func() bool { return false }
}
