package standin_test

import (
	"fmt"
	"strings"
	"testing"

	"heft/bot/standin"
)

func words(n int) string { return strings.Repeat("x", n) }

func section(text string) string {
	return fmt.Sprintf(`{"type":"section","text":{"type":"mrkdwn","text":"%s"}}`, text)
}

func button(fields string) string {
	return `{"type":"button","text":{"type":"plain_text","text":"go"}` + fields + `}`
}

func actions(elements ...string) string {
	return `{"type":"actions","elements":[` + strings.Join(elements, ",") + `]}`
}

func many(n int, one func(i int) string) []string {
	list := make([]string, n)
	for i := range list {
		list[i] = one(i)
	}
	return list
}

func option(text, value string) string {
	return fmt.Sprintf(`{"text":{"type":"plain_text","text":"%s"},"value":"%s"}`, text, value)
}

func choice(kind string, n int) string {
	return fmt.Sprintf(`{"type":"%s","action_id":"c","options":[%s]}`, kind,
		strings.Join(many(n, func(i int) string { return option("a", fmt.Sprint(i)) }), ","))
}

// blockLimits are those of the platform documentation: Block Kit, the page of
// each block, element and object. Each has both of its sides.
var blockLimits = []struct{ name, good, bad string }{
	{"blocks of a message", strings.Join(many(50, plainSection), ","), strings.Join(many(51, plainSection), ",")},
	{"section text", section(words(3000)), section(words(3001))},
	{"section without text or fields", section("x"), `{"type":"section"}`},
	{"empty text", section("x"), section("")},
	{"fields", `{"type":"section","fields":[` + strings.Join(many(10, func(int) string { return `{"type":"mrkdwn","text":"x"}` }), ",") + `]}`,
		`{"type":"section","fields":[` + strings.Join(many(11, func(int) string { return `{"type":"mrkdwn","text":"x"}` }), ",") + `]}`},
	{"field text", `{"type":"section","fields":[{"type":"mrkdwn","text":"` + words(2000) + `"}]}`,
		`{"type":"section","fields":[{"type":"mrkdwn","text":"` + words(2001) + `"}]}`},
	{"header", `{"type":"header","text":{"type":"plain_text","text":"` + words(150) + `"}}`,
		`{"type":"header","text":{"type":"plain_text","text":"` + words(151) + `"}}`},
	{"header in markup", `{"type":"header","text":{"type":"plain_text","text":"x"}}`,
		`{"type":"header","text":{"type":"mrkdwn","text":"x"}}`},
	{"elements of actions", actions(many(25, numbered)...), actions(many(26, numbered)...)},
	{"no elements", actions(numbered(0)), actions()},
	{"an input among actions", actions(numbered(0)), actions(`{"type":"plain_text_input","action_id":"a"}`)},
	{"action_id twice", actions(numbered(0), numbered(1)), actions(numbered(0), numbered(0))},
	{"button text", actions(`{"type":"button","text":{"type":"plain_text","text":"` + words(75) + `"}}`),
		actions(`{"type":"button","text":{"type":"plain_text","text":"` + words(76) + `"}}`)},
	{"button text in markup", actions(button("")), actions(`{"type":"button","text":{"type":"mrkdwn","text":"x"}}`)},
	{"button value", actions(button(`,"value":"` + words(2000) + `"`)), actions(button(`,"value":"` + words(2001) + `"`))},
	{"action_id", actions(button(`,"action_id":"` + words(255) + `"`)), actions(button(`,"action_id":"` + words(256) + `"`))},
	{"button style", actions(button(`,"style":"danger"`)), actions(button(`,"style":"pink"`))},
	{"button label", actions(button(`,"accessibility_label":"` + words(75) + `"`)), actions(button(`,"accessibility_label":"` + words(76) + `"`))},
	{"confirm title", actions(button(confirm(100))), actions(button(confirm(101)))},
	{"block_id", `{"type":"divider","block_id":"` + words(255) + `"}`, `{"type":"divider","block_id":"` + words(256) + `"}`},
	{"block_id twice", `{"type":"divider","block_id":"a"},{"type":"divider","block_id":"b"}`,
		`{"type":"divider","block_id":"a"},{"type":"divider","block_id":"a"}`},
	{"select options", actions(choice("static_select", 100)), actions(choice("static_select", 101))},
	{"overflow options", actions(choice("overflow", 5)), actions(choice("overflow", 6))},
	{"radio options", actions(choice("radio_buttons", 10)), actions(choice("radio_buttons", 11))},
	{"no options", actions(choice("static_select", 1)), actions(choice("static_select", 0))},
	{"context elements", contextOf(10), contextOf(11)},
	{"image", `{"type":"image","image_url":"https://a.example/a.png","alt_text":"a"}`, `{"type":"image","alt_text":"a"}`},
	{"image without words", `{"type":"image","slack_file":{"id":"F1"},"alt_text":"a"}`, `{"type":"image","slack_file":{"id":"F1"}}`},
	{"unknown block", `{"type":"divider"}`, `{"type":"hologram"}`},
	{"unknown field", `{"type":"divider"}`, `{"type":"divider","colour":"red"}`},
}

func numbered(i int) string { return button(fmt.Sprintf(`,"action_id":"a%d"`, i)) }

func plainSection(int) string { return section("x") }

func TestBlockLimits(t *testing.T) {
	w := start(t, standin.Options{})
	for _, c := range blockLimits {
		t.Run(c.name, func(t *testing.T) {
			for blocks, want := range map[string]string{c.good: "", c.bad: "invalid_blocks"} {
				a := form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "x", "blocks", "["+blocks+"]")
				if got, _ := a["error"].(string); got != want {
					t.Errorf("%.80s: answered %v, want %q", blocks, a, want)
				}
				if want != "" && at(a, "response_metadata.messages.0") == nil {
					t.Errorf("%.80s: no reason given: %v", blocks, a)
				}
			}
		})
	}
	if a := form(t, w, "chat.postMessage", "channel", standin.Yard, "text", "x", "blocks", `{"type":"divider"}`); a["error"] != "invalid_blocks_format" {
		t.Errorf("an object for a list: %v", a)
	}
}

func contextOf(n int) string {
	return `{"type":"context","elements":[` + strings.Join(many(n, func(int) string { return `{"type":"mrkdwn","text":"x"}` }), ",") + `]}`
}

func confirm(title int) string {
	return `,"confirm":{"title":{"type":"plain_text","text":"` + words(title) + `"},"text":{"type":"plain_text","text":"sure?"},` +
		`"confirm":{"type":"plain_text","text":"yes"},"deny":{"type":"plain_text","text":"no"}}`
}

// Blocks may stand for the text, which the phone then has nothing to show of;
// they come as an array in JSON and as a string in a form.
func TestBlocksArePosted(t *testing.T) {
	w := start(t, standin.Options{})
	_, _, a := post(t, w, "chat.postMessage", w.BotToken(), "application/json",
		`{"channel":"`+standin.Yard+`","blocks":[`+section("R&amp;D *bold*")+`,`+actions(button(`,"action_id":"go","value":"1"`))+`]}`)
	if a["ok"] != true {
		t.Fatal(a)
	}
	m := w.Messages(standin.Yard)[0]
	if m.Text != "" || len(m.Blocks) != 2 || m.Blocks[0].Text.Shown() != "R&D *bold*" || m.Blocks[1].Elements[0].Text.Text != "go" {
		t.Errorf("kept %+v", m)
	}
	if m.Blocks[0].ID == "" || m.Blocks[0].ID == m.Blocks[1].ID {
		t.Errorf("block ids %q and %q", m.Blocks[0].ID, m.Blocks[1].ID)
	}
	if got := at(a, "message.blocks.1.block_id"); got != m.Blocks[1].ID {
		t.Errorf("the answer's block is %v, want %s", got, m.Blocks[1].ID)
	}
	if a := form(t, w, "chat.postMessage", "channel", standin.Yard, "blocks", "[]"); a["error"] != "no_text" {
		t.Errorf("neither text nor blocks: %v", a)
	}
}
