package slackchat

import (
	"context"
	"errors"
	"fmt"
	"log/slog"
	"net/http"
	"net/url"
	"slices"
	"strings"
	"sync"

	"github.com/slack-go/slack"
	"github.com/slack-go/slack/slackevents"

	"heft/bot"
)

// The environment variables of a bot that several workspaces install.
const (
	ClientIDVar     = "SLACK_CLIENT_ID"
	ClientSecretVar = "SLACK_CLIENT_SECRET"
	PublicURLVar    = "HEFT_PUBLIC_URL"
)

// Ring keeps the token of each workspace.
type Ring interface {
	Keep(team, token string) error
	Drop(team string) error
	All() (map[string]string, error)
}

// Install is what the bot needs to be installed by workspaces.
type Install struct {
	ClientID, ClientSecret string
	// PublicURL is how the workspaces reach the address that is listened on;
	// it ends in a slash.
	PublicURL string
	Ring      Ring
	// Supervisors are TEAM/USER: a user's id says nothing in another
	// workspace.
	Supervisors []string
}

// Teams is the bot in every workspace that installed it. Each has a Chat and a
// clerk of its own; what they share, the journal and the memory, is kept by
// workspace.
type Teams struct {
	cfg     Config
	install Install
	clerk   bot.Clerk
	log     *slog.Logger

	mu      sync.Mutex
	members map[string]member
	telling sync.WaitGroup
	ctx     context.Context // until it is told to stop
}

// NewTeams prepares it; it reaches no network. The configuration's bot token
// is not looked at.
func NewTeams(cfg Config, install Install, clerk bot.Clerk, log *slog.Logger) (*Teams, error) {
	cfg = cfg.withDefaults()
	cfg.AppToken = "" // what several workspaces install speaks by requests
	err := errors.Join(cfg.checkWayIn(), checkURL(cfg.APIURL), cfg.checkSummary(), install.check())
	if err != nil {
		return nil, err
	}
	return &Teams{cfg: cfg, install: install, clerk: clerk, log: slog.New(Masked(log.Handler())), members: map[string]member{}}, nil
}

func (i Install) check() error {
	u, err := url.Parse(i.PublicURL)
	switch {
	case i.ClientID == "" || i.ClientSecret == "":
		return fmt.Errorf("%s and %s are set together: both stand on the app's page", ClientIDVar, ClientSecretVar)
	case err != nil || u.Host == "" || !strings.HasSuffix(u.Path, "/") || u.Scheme != "https" && !loopback(u.Hostname()):
		return fmt.Errorf("%s is the https address at which workspaces reach this one, with a slash at its end", PublicURLVar)
	}
	for _, s := range i.Supervisors {
		if team, user, ok := strings.Cut(s, "/"); !ok || team == "" || user == "" {
			return fmt.Errorf("a supervisor of several workspaces is named as TEAM/USER, not %q", s)
		}
	}
	return nil
}

// Run answers in every workspace until the context ends, and then returns nil
// once everything in hand is finished.
func (t *Teams) Run(ctx context.Context) error {
	ctx, over := context.WithCancel(ctx)
	defer t.telling.Wait()
	defer over()
	t.ctx = ctx
	tokens, err := t.install.Ring.All()
	if err != nil {
		return err
	}
	for team, token := range tokens {
		err := t.join(team, token)
		if revoked(err) {
			err = t.install.Ring.Drop(team)
		}
		if err != nil {
			t.log.ErrorContext(ctx, "a workspace was not joined", keyTeam, team, bot.KeyErr, hide(err))
		}
	}
	q := &requests{ctx: ctx, log: t.log, secret: t.cfg.SigningSecret, find: t.find, pages: t.pages()}
	return q.run(t.cfg.Listen, slowest, t.finish)
}

// revoked says whether a token is good for nothing any more: the workspace
// took the bot out while nobody listened.
func revoked(err error) bool {
	answer, ok := errors.AsType[slack.SlackErrorResponse](err)
	return ok && slices.Contains([]string{"account_inactive", "token_revoked", "invalid_auth"}, answer.Err)
}

// join begins to answer in a workspace, in the place of whoever did there
// before.
func (t *Teams) join(team, token string) error {
	cfg := t.cfg
	cfg.BotToken = token
	clerk := t.clerk
	clerk.Supervisors = nil
	for _, s := range t.install.Supervisors {
		if user, ok := strings.CutPrefix(s, team+"/"); ok {
			clerk.Supervisors = append(clerk.Supervisors, user)
		}
	}
	chat, err := New(cfg, &clerk, t.log)
	if err != nil {
		return err
	}
	self, err := chat.identified(t.ctx)
	switch {
	case err != nil:
		return err
	case self.team != team:
		return fmt.Errorf("the token kept for %s is that of %s", team, self.team)
	}
	if err := chat.Recover(t.ctx, t.cfg.Now()); err != nil {
		return err
	}
	work, drop := context.WithCancel(context.WithoutCancel(t.ctx))
	chat.gone = func() { t.leave(team) }
	t.mu.Lock()
	before, again := t.members[team]
	t.members[team] = member{chat, self, work, drop}
	t.mu.Unlock()
	if again {
		t.telling.Go(func() { before.chat.finish(before.drop) })
	}
	t.telling.Go(func() {
		day, over := context.WithCancel(work)
		defer over()
		defer context.AfterFunc(t.ctx, over)()
		chat.summaries(day, self)
	})
	t.log.InfoContext(t.ctx, "joined", keyTeam, team)
	return nil
}

// leave forgets a workspace that took the bot out: its token, and all that is
// in hand for it.
func (t *Teams) leave(team string) {
	t.mu.Lock()
	m, there := t.members[team]
	delete(t.members, team)
	t.mu.Unlock()
	if there {
		m.drop()
	}
	if err := t.install.Ring.Drop(team); err != nil {
		t.log.Error("the token of a workspace that left was not forgotten", keyTeam, team, bot.KeyErr, err)
	}
	t.log.Info("left", keyTeam, team)
}

func (t *Teams) find(team string) (member, bool) {
	t.mu.Lock()
	defer t.mu.Unlock()
	m, ok := t.members[team]
	return m, ok
}

// finish waits for what is in hand everywhere.
func (t *Teams) finish() {
	t.mu.Lock()
	all := t.members
	t.members = map[string]member{}
	t.mu.Unlock()
	var done sync.WaitGroup
	for _, m := range all {
		done.Go(func() { m.chat.finish(m.drop) })
	}
	done.Wait()
}

// takenOut is what is to be done when a workspace takes the bot out.
func (c *Chat) takenOut(data any) task {
	if revoked, ok := data.(*slackevents.TokensRevokedEvent); ok && len(revoked.Tokens.Bot) == 0 {
		return task{} // of people, whose tokens the bot has none of
	}
	return task{do: func(ctx context.Context, d delivery) {
		d.take(ctx)
		c.log.WarnContext(ctx, "the workspace took the bot out")
		if c.gone != nil {
			c.gone()
		}
	}}
}

// pages are what whoever installs the bot looks at.
func (t *Teams) pages() http.Handler {
	mux := http.NewServeMux()
	mux.HandleFunc("GET /install", t.sendToInstall)
	mux.HandleFunc("GET /installed", t.installed)
	return mux
}
