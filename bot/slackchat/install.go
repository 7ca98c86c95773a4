package slackchat

import (
	"context"
	"crypto/rand"
	"crypto/subtle"
	"errors"
	"io"
	"net/http"
	"net/url"
	"strings"
	"time"

	"github.com/slack-go/slack"

	"heft/bot"
)

// The dialogue of an installation (platform documentation, installing with
// OAuth): the person is sent to the workspace with a state, comes back with
// the state and a code, and the code is exchanged for a token.
const (
	agreeAt     = "https://slack.com/oauth/v2/authorize"
	stateCookie = "heft-install"
	stateLife   = 10 * time.Minute
)

func (t *Teams) redirect() string { return t.install.PublicURL + "installed" }

// sendToInstall sends a person to where they agree to the installation. The
// state ties their coming back to this browser.
func (t *Teams) sendToInstall(rw http.ResponseWriter, r *http.Request) {
	state := rand.Text()
	http.SetCookie(rw, &http.Cookie{
		Name: stateCookie, Value: state, Path: "/", MaxAge: int(stateLife / time.Second), HttpOnly: true,
		Secure: strings.HasPrefix(t.install.PublicURL, "https:"), SameSite: http.SameSiteLaxMode,
	})
	http.Redirect(rw, r, agreeAt+"?"+url.Values{
		"client_id": {t.install.ClientID}, "scope": {strings.Join(Scopes, ",")}, "state": {state}, "redirect_uri": {t.redirect()},
	}.Encode(), http.StatusFound)
}

// installed exchanges the code for a token, keeps it and begins to answer.
func (t *Teams) installed(rw http.ResponseWriter, r *http.Request) {
	rw.Header().Set("Content-Type", "text/plain; charset=utf-8")
	rw.Header().Set("Cache-Control", "no-store")
	kept, err := r.Cookie(stateCookie)
	state, code := r.URL.Query().Get("state"), r.URL.Query().Get("code")
	if err != nil || code == "" || subtle.ConstantTimeCompare([]byte(kept.Value), []byte(state)) != 1 {
		t.answerInstall(rw, http.StatusBadRequest, bot.Voice.NotInstalled)
		return
	}
	http.SetCookie(rw, &http.Cookie{Name: stateCookie, Path: "/", MaxAge: -1})
	if err := t.exchange(r.Context(), code); err != nil {
		t.log.ErrorContext(r.Context(), "the bot was not installed", bot.KeyErr, hide(err))
		t.answerInstall(rw, http.StatusBadGateway, bot.Voice.NotInstalled)
		return
	}
	t.answerInstall(rw, http.StatusOK, bot.Voice.Installed)
}

func (t *Teams) answerInstall(rw http.ResponseWriter, status int, say func(bot.Voice) string) {
	rw.WriteHeader(status)
	_, _ = io.WriteString(rw, say(bot.VoiceOf(""))+"\n") // whoever asked has gone otherwise
}

var errWhole = errors.New("the app is installed in one workspace at a time, not in a whole organisation")

func (t *Teams) exchange(ctx context.Context, code string) error {
	var options []slack.OAuthOption
	if t.cfg.APIURL != "" {
		options = append(options, slack.OAuthOptionAPIURL(t.cfg.APIURL))
	}
	got, err := slack.GetOAuthV2ResponseContext(ctx, httpClient(1), t.install.ClientID, t.install.ClientSecret, code, t.redirect(), options...)
	switch {
	case err != nil:
		return err
	case got.IsEnterpriseInstall:
		return errWhole
	case got.Team.ID == "" || got.AccessToken == "":
		return errNoReason
	}
	if err := t.install.Ring.Keep(got.Team.ID, got.AccessToken); err != nil {
		return err
	}
	return t.join(got.Team.ID, got.AccessToken)
}
