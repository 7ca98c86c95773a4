package slackchat_test

import (
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"pgregory.net/rapid"

	"heft/bot"
	"heft/bot/slackchat"
	"heft/bot/standin"
)

const self = "U0BOT00001"

// The left side is as the platform documentation (formatting message text)
// spells what a person types; the right side is what was typed.
func TestTyped(t *testing.T) {
	for _, c := range []struct{ raw, want string }{
		{"<@U0BOT00001> 14 in red oak", "14 in red oak"},
		{"<@U0BOT00001|heft> 14 in red oak", "14 in red oak"},
		{"<@U0BOT00001>: 14 in", "14 in"},
		{"  <@U0BOT00001>,\n14 in ", "14 in"},
		{"14 in <@U0BOT00001> red oak", "14 in red oak"},
		{"14 in red oak <@U0BOT00001>", "14 in red oak"},
		{"<@U0BOT00001>", ""},
		{"<@U0BOT00001> <@U0BOT00001>", ""},
		{"hey <@U0BOT00001>, 14 in", "hey 14 in"},
		{"<@U0BOT00001> :deciduous_tree: 14 in", ":deciduous_tree: 14 in"},
		{"", ""},
		{"ask <@U0CREW0002> or <@U0CREW0003|bea>", "ask @someone or @bea"},
		{"job: arborist <@U0CREW0002>, limit 600 lb", "job: arborist @U0CREW0002, limit 600 lb"},
		{"job: arborist <@U0CREW0002> limit 600 lb", "job: arborist @U0CREW0002, limit 600 lb"},
		{"job: arborist <@U0CREW0002>. Limit 600 lb", "job: arborist @U0CREW0002, Limit 600 lb"},
		{"trabajo: arborista es <@U0CREW0002|ana>", "trabajo: arborista es @U0CREW0002"},
		{"<@U0BOT00001> Arborist: <@U0CREW0002> and <@U0CREW0003>", "Arborist: @U0CREW0002 and @someone"},
		{"<!channel> <!here|here> <!everyone>", "@channel @here @everyone"},
		{"<!subteam^S0CREW001|@climbers>, <!subteam^S0CREW001>", "@climbers, @group"},
		{"in <#C0YARD0001|yard> or <#C0YARD0001>", "in #yard or #channel"},
		{"<!date^1392734382^{date}|Feb 18>", "Feb 18"},
		{"oak &lt; 14 in &amp; ash &gt; 20 in", "oak < 14 in & ash > 20 in"},
		{"&amp;lt;14&amp;gt;", "&lt;14&gt;"},
		{"call <tel:5550123|555-0123>", "call 555-0123"},
		{"<https://trees.example/a?b=1&amp;c=2>", "https://trees.example/a?b=1&c=2"},
		{"<https://trees.example|trees.example>", "trees.example"},
		{"<mailto:ann@crew.example|ann@crew.example>", "ann@crew.example"},
		{"14” oak 22’", "14” oak 22’"},
		{"line one\nline two", "line one\nline two"},
		{"5 < 6", "5 < 6"}, // nothing the platform sends, and nothing to trip over
		{"<>", "<>"},
		{"<@>", "@someone"},
	} {
		if got := slackchat.Typed(c.raw, self); got != c.want {
			t.Errorf("%q: %q, want %q", c.raw, got, c.want)
		}
	}
}

// The platform turns &, < and > into entities and adds nothing where nobody
// is named (platform documentation, formatting message text).
func TestTypedUndoesThePlatformsEscapes(t *testing.T) {
	escape := strings.NewReplacer("&", "&amp;", "<", "&lt;", ">", "&gt;")
	rapid.Check(t, func(t *rapid.T) {
		said := strings.TrimSpace(rapid.StringN(0, 200, -1).Filter(func(s string) bool {
			return !strings.Contains(s, "\x00")
		}).Draw(t, "said"))
		if got := slackchat.Typed("<@"+self+"> x"+escape.Replace(said), self); got != "x"+said {
			t.Fatalf("%q, want %q", got, "x"+said)
		}
	})
}

func FuzzTyped(f *testing.F) {
	for _, s := range []string{"<@U0BOT00001> 14 in", "<|><!><@U0BOT00001|", "\x00<\x00>", "&amp;&lt;", "\xff<a|\xfe>"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, raw string) {
		got := slackchat.Typed(raw, self)
		if strings.Contains(got, "\x00") || got != strings.TrimSpace(got) {
			t.Errorf("%q became %q", raw, got)
		}
	})
}

// A message that was cut must still be longer than any question, or a part of
// it could be read as the whole.
func TestHugeMessageStaysTooLong(t *testing.T) {
	for _, raw := range []string{strings.Repeat("木", 39_000), strings.Repeat("&amp;", 39_000), strings.Repeat("14 in ", 30_000)} {
		n := utf8.RuneCountInString(slackchat.Typed(raw, self))
		if n > 8_000 || n < 7_999 {
			t.Errorf("%d characters passed on", n)
		}
	}
}

// Whatever a reply repeats, nobody's phone buzzes and nothing is dressed up.
func TestRepliesCarryNoMarkup(t *testing.T) {
	for _, text := range []string{
		"<!channel> <!here> <@U0CREW0002> <!subteam^S0CREW001>",
		"@channel @here @everyone @ann",
		"&lt;!channel&gt;",
		"*bold* _italic_ ~struck~ `code` > quoted",
		"see https://phish.example/x or <https://phish.example|here>",
		"14 in < 20 in & so on",
	} {
		r := prepare(t, standin.Options{})
		top := r.Say(standin.Yard, crew, "what now")
		r.journal.entries = []bot.Entry{{
			ID: "Ev1", Workspace: standin.TeamID, Channel: standin.Yard, Thread: top.TS,
			Asked: time.Now(), Reply: "You wrote: " + text,
		}}
		if err := r.chat.Recover(t.Context(), time.Now()); err != nil {
			t.Fatal(err)
		}
		got := r.own(top)
		if len(got) != 1 {
			t.Fatalf("%d posts of %q", len(got), text)
		}
		m := got[0]
		if len(m.Pings()) > 0 || len(m.Links()) > 0 || !m.Plain || m.Unfurls || m.LinkNames || m.Parse != "none" {
			t.Errorf("%q: pings %q, links %q, %+v", text, m.Pings(), m.Links(), m)
		}
		if !strings.Contains(m.Shown(), "You wrote: "+text) {
			t.Errorf("%q is shown as %q", text, m.Shown())
		}
	}
}

func TestQuestionsCannotPing(t *testing.T) { bothWays(t, questionsCannotPing) }

func questionsCannotPing(t *testing.T, via way) {
	r := prepare(t, standin.Options{}, via).run()
	for _, words := range []string{
		"<!channel> 14 in <@U0CREW0002> red oak 22 ft",
		"&lt;!channel&gt; red oak", "&amp;lt;!here&amp;gt; 14 in", "14 in @channel oak *22* ft `x`",
	} {
		m := r.answered(r.ask(standin.Yard, words))
		if len(m.Pings()) > 0 || len(m.Links()) > 0 || !m.Plain {
			t.Errorf("%q was answered with %q", words, m.Text)
		}
	}
}

// Platform documentation, chat.postMessage: past 40,000 characters the end is
// cut off, and with it the reminder.
func TestReplyTooLongToBeWholeIsNotPosted(t *testing.T) {
	r := prepare(t, standin.Options{})
	top := r.Say(standin.Yard, crew, "everything")
	r.journal.entries = []bot.Entry{{
		ID: "Ev1", Workspace: standin.TeamID, Channel: standin.Yard, Thread: top.TS,
		Asked: time.Now(), Reply: strings.Repeat("&", 9_000),
	}}
	if err := r.chat.Recover(t.Context(), time.Now()); err != nil {
		t.Fatal(err)
	}
	if e, _ := r.journal.of("Ev1"); len(r.own(top)) > 0 || !strings.Contains(e.Failure, "characters") {
		t.Errorf("%d posts, recorded %q", len(r.own(top)), e.Failure)
	}
}
