package practice_test

import (
	"context"
	"fmt"
	"io"
	"net/http"
	"strings"
	"testing"
)

const quarry = "C0QUARRYRD"

// leads is where a card leads: no further than one step, and that step's
// fragment.
func (r *rig) leads(card string) string {
	r.Helper()
	stay := &http.Client{CheckRedirect: func(*http.Request, []*http.Request) error { return http.ErrUseLastResponse }}
	resp, err := stay.Get(r.page.URL + card)
	if err != nil {
		r.Fatal(err)
	}
	defer resp.Body.Close()
	if resp.StatusCode != http.StatusSeeOther {
		r.Fatalf("%s: %d", card, resp.StatusCode)
	}
	return resp.Header.Get("Location")
}

// lands reads the page that a card leads to, and what it lands on there: the
// tag of that name, and what stands in it.
func (r *rig) lands(card string) (page, tag string) {
	r.Helper()
	to := r.leads(card)
	_, page = r.get(strings.Split(to, "#")[0])
	_, id, _ := strings.Cut(to, "#")
	before, after, found := strings.Cut(page, `id="`+id+`"`)
	if !found {
		r.Fatalf("%s leads to %s, which is not there:\n%s", card, to, page)
	}
	start := strings.LastIndex(before, "<")
	after, _, _ = strings.Cut(after, "</")
	return page, before[start:] + `id="` + id + `"` + after
}

func TestEveryLessonLandsOnWhatItFilled(t *testing.T) {
	r := open(t, func(context.Context, io.Writer) error { return nil })
	for lang, asks := range map[string]map[int]string{
		"en": {1: "14 in red oak limb", 3: "maple limb", 4: "job: site", 5: "stand it up", 8: "will it clear?", 9: "power line", 10: "rama de roble"},
		"es": {1: "rama de roble rojo", 3: "rama de arce", 4: "trabajo: sitio", 5: "pararla", 8: "¿lo libra?", 9: "cable de luz", 10: "14 in red oak"},
	} {
		for n, ask := range asks {
			_, tag := r.lands(fmt.Sprintf("/try/%d?lang=%s", n, lang))
			if !strings.HasPrefix(tag, "<textarea") || !strings.Contains(tag, ask) {
				t.Errorf("%s: card %d lands on %s", lang, n, tag)
			}
		}
	}
	// The line on top says which of the ten is at hand, and what comes then.
	next := func(page, to, words string) {
		t.Helper()
		if !strings.Contains(page, `class="next" href="`+to+`">`+words+`</a>`) {
			t.Errorf("the page does not lead to %s by %q:\n%s", to, words, page)
		}
	}
	page, _ := r.lands("/try/10?lang=es")
	next(page, "/try/10?lang=es", "Ahora: 10 de 10")
	r.space.Say(mill, "U0TEO00002", r.space.Mention()+" "+"14 in red oak limb 22 ft, hitched at 35 ft")
	_, page = r.get("/?lang=es")
	next(page, "/day?job=C0MILLLANE&amp;lang=es&amp;who=supervisor", "Por último: la hoja del día")
	page, _ = r.lands("/try/3?lang=en")
	next(page, "/try/3?lang=en", "Now: 3 of 10")
	for _, card := range []string{"/try/0", "/try/11", "/try/x"} {
		if resp, _ := r.get(card); resp.StatusCode != http.StatusNotFound {
			t.Errorf("%s: %d", card, resp.StatusCode)
		}
	}
}

// The second card follows up the ticket of the first, whatever has been asked
// since; before that, the first is filled in.
func TestTheFollowUpLandsUnderItsTicket(t *testing.T) {
	r := open(t, nil)
	if _, page := r.get("/?lang=es"); !strings.Contains(page, `href="/try/1?lang=es">Siguiente: 1 de 10<`) {
		t.Error("the page does not say where to begin")
	}
	page, tag := r.lands("/try/2?lang=en")
	if !strings.Contains(tag, ">14 in red oak limb 22 ft, hitched at 35 ft") {
		t.Errorf("lands on %s", tag)
	}
	r.want(seen(page), "Number 2 builds on 1. Number 1 is filled in here: send it first, for everybody, then tap number 2 again.", "Now: 2 of 10")
	for _, ask := range []string{"14 in red oak limb 22 ft, hitched at 35 ft", "something else", "3", "4", "5", "6", "7"} {
		m := r.space.Say(mill, rosa, r.space.Mention()+" "+ask)
		r.call("chat.postMessage", "channel", mill, "thread_ts", m.TS, "text", "Plan on it.")
	}
	first := strings.Replace(r.space.Messages(mill)[0].TS, ".", "-", 1)
	for lang, ask := range map[string]string{"en": "what about 16 ft", "es": "¿y con 16 pies de largo?"} {
		page, tag = r.lands("/try/2?lang=" + lang)
		if !strings.HasPrefix(tag, `<textarea id="rt`+first+`"`) || !strings.Contains(tag, " autofocus>"+ask) {
			t.Errorf("lands on %s", tag)
		}
		r.want(page, `<details class="more" open>`, `<details id="older" open>`)
		r.without(page, `id="write" name="text" rows="3" maxlength="3000" required aria-describedby="hint" autofocus`)
	}
}

// The cards that tap a button say what they build on, one after the other, and
// then land on the button.
func TestButtonsComeAfterWhatTheyStandUnder(t *testing.T) {
	r := open(t, nil)
	fills := func(card, ask, words string) {
		t.Helper()
		page, tag := r.lands(card)
		if !strings.HasPrefix(tag, "<textarea") || !strings.Contains(tag, ask) {
			t.Errorf("%s lands on %s", card, tag)
		}
		r.want(seen(page), words)
	}
	fills("/try/6?lang=en", ">job: site Quarry Road", "Number 6 builds on 4 and 5. Number 4 is filled in here: send it first, for everybody, then tap number 6 again.")
	r.space.Say(quarry, "U0SAM00004", r.space.Mention()+" trabajo: sitio Camino de la Cantera, límite 2,000 libras, arborista <@U0INGE0003>")
	fills("/try/7?lang=es", ">rama de roble rojo de 10 pulgadas", "El número 7 se apoya en 4 y 5. Aquí está listo el número 5")
	lift := r.space.Say(quarry, teo, r.space.Mention()+" red oak limb 10 in 20 ft, stand it up on a 2:1, tied 12 ft from the cut, block 20 ft above the cut, 20° above horizontal")
	fills("/try/6?lang=en", ">red oak limb 10 in 20 ft, stand it up", "Number 5 is filled in here") // not answered yet
	r.call("chat.postMessage", "channel", quarry, "thread_ts", lift.TS, "text", "x", "blocks", confirmable)
	for _, card := range []string{"/try/6?lang=en", "/try/7?lang=es"} {
		if _, tag := r.lands(card); !strings.HasPrefix(tag, `<button type="submit" id="bt`) || !strings.Contains(tag, "Confirmed on site") {
			t.Errorf("%s lands on %s", card, tag)
		}
	}
}

const confirmable = `[{"type":"section","text":{"type":"mrkdwn","text":"It takes a pull."}},{"type":"actions","elements":[` +
	`{"type":"button","action_id":"why","value":"1","text":{"type":"plain_text","text":"Show the working"}},` +
	`{"type":"button","action_id":"confirm","value":"1","text":{"type":"plain_text","text":"Confirmed on site"}}]}]`

// A no stands right below the button that it is about, and once.
func TestRefusalStandsByTheButton(t *testing.T) {
	r := open(t, nil)
	lift := r.space.Say(quarry, teo, r.space.Mention()+" a lift")
	answer := r.call("chat.postMessage", "channel", quarry, "thread_ts", lift.TS, "text", "x", "blocks", confirmable)["ts"].(string)
	r.call("chat.postMessage", "channel", quarry, "thread_ts", lift.TS, "text", "the picture")
	for range 2 {
		r.post("/press", "job", quarry, "channel", quarry, "ts", answer, "action", "confirm")
		r.next()
		r.call("chat.postEphemeral", "channel", quarry, "user", rosa, "thread_ts", lift.TS, "text", "Not yours.")
	}
	_, page := r.get("/?job=" + quarry)
	button, no, picture := strings.Index(page, ">Confirmed on site</button>"), strings.Index(page, "Not yours."), strings.Index(page, "the picture")
	if button < 0 || no < button || picture < no || strings.Count(page, "Not yours.") != 1 {
		t.Errorf("button %d, no %d, picture %d:\n%s", button, no, picture, page)
	}
}

// What one asks alone shows with what it was asked.
func TestAskedAloneShowsTheQuestion(t *testing.T) {
	r := open(t, nil)
	r.reply = `{"text":"plan on 530 lb\nand more"}`
	_, page := r.post("/say", "text", "14 in red oak log 6 ft <b>", "alone", "1")
	r.want(page, `<p class="body">14 in red oak log 6 ft &lt;b&gt;</p>`, `<p class="head">plan on 530 lb</p>`)
	if q, a := strings.Index(page, "log 6 ft"), strings.Index(page, "plan on 530"); q > a {
		t.Errorf("the question stands at %d, the answer at %d", q, a)
	}
	_, theirs := r.get("/?who=climber&job=" + mill)
	r.without(theirs, "log 6 ft", "530 lb")
}

// Whoever the desk has by their id is called by name; what a person typed
// stays as it is.
func TestKnownIDsAreNames(t *testing.T) {
	r := open(t, nil)
	m := r.space.Say(mill, rosa, "who is U0INGE0003?")
	r.call("chat.postMessage", "channel", mill, "thread_ts", m.TS, "text", "arborist “U0INGE0003”, not U0NOBODY99\nand U0TEO00002.")
	r.call("chat.postMessage", "channel", mill, "thread_ts", m.TS, "text", "x", "blocks", `[{"type":"section","text":{"type":"plain_text","text":"by @U0SAM00004"}}]`)
	_, page := r.get("/?job=" + mill)
	r.want(seen(page), "who is U0INGE0003?", "arborist “Inge”, not U0NOBODY99", "and Teo.", "by @Sam")
}

// The form that confirms an answer speaks the reader's language, and stays at
// the job where it was asked for.
func TestConfirmForm(t *testing.T) {
	r := open(t, nil)
	answer := r.call("chat.postMessage", "channel", quarry, "text", "x", "blocks", confirmable)["ts"].(string)
	r.post("/press", "job", quarry, "channel", quarry, "ts", answer, "action", "confirm")
	trigger, _ := r.next()["trigger_id"].(string)
	r.call("views.open", "trigger_id", trigger, "view", `{"type":"modal","callback_id":"confirm","title":{"type":"plain_text","text":"Stand by it"},`+
		`"submit":{"type":"plain_text","text":"Aye"},"close":{"type":"plain_text","text":"Nay"},"blocks":[{"type":"input","block_id":"note","optional":true,`+
		`"label":{"type":"plain_text","text":"Words"},"element":{"type":"plain_text_input","action_id":"note"}}]}`)
	_, page := r.get("/?lang=es&job=" + quarry)
	r.want(seen(page), "Confirmado en el sitio", "Una nota, si la hay", "Cancelar", "Confirmar")
	r.without(seen(page), "Stand by it", "Aye", "Nay", "Words")
	_, page = r.get("/?job=" + mill) // as a page does that looks again
	r.without(page, "<dialog")
	_, page = r.get("/?job=" + quarry)
	r.want(page, "<dialog")
	req, err := http.NewRequest(http.MethodGet, r.page.URL+"/?job="+mill, nil)
	if err != nil {
		t.Fatal(err)
	}
	req.Header.Set("Sec-Fetch-Dest", "document") // as a person does who goes there
	resp, err := http.DefaultClient.Do(req)
	if err != nil {
		t.Fatal(err)
	}
	_, page = r.read(resp)
	r.without(page, "<dialog", " inert")
	_, page = r.get("/?job=" + quarry)
	r.without(page, "<dialog")
}

// What is wrong with a follow-up is said under its ticket.
func TestNotesStandByTheirForms(t *testing.T) {
	r := open(t, nil)
	m := r.space.Say(mill, rosa, "14 in")
	at := strings.Replace(m.TS, ".", "-", 1)
	resp, page := r.post("/say", "text", " ", "thread", m.TS)
	if got := resp.Request.URL.Query().Get("at"); got != "rt"+at {
		t.Errorf("leads to %s", resp.Request.URL)
	}
	if note := strings.Index(page, "nothing on the ticket"); note < strings.Index(page, `id="t`+at+`"`) || !strings.Contains(page, `<details class="more" open>`) {
		t.Errorf("the note stands at %d of %s", note, page)
	}
	_, page = r.post("/say", "text", " ")
	if note := strings.Index(page, "nothing on the ticket"); note < strings.Index(page, `id="write"`) || note > strings.Index(page, `id="tickets"`) {
		t.Errorf("the note stands at %d of %s", note, page)
	}
}

func TestOlderTicketsAreFolded(t *testing.T) {
	r := open(t, nil)
	for i := range 7 {
		r.space.Say(mill, rosa, fmt.Sprint("piece number ", i+1))
		if _, page := r.get("/?job=" + mill); i < 5 != strings.Contains(page, `<details id="older" hidden>`) {
			t.Errorf("after %d tickets: %s", i+1, page)
		}
	}
	_, page := r.get("/?job=" + mill)
	head, older, _ := strings.Cut(page, `<details id="older">`)
	r.want(head, "piece number 7", "piece number 3")
	r.without(head, "piece number 2<")
	r.want(older, "piece number 2<", "piece number 1<")
}
