package slackchat

import (
	"context"
	"errors"
	"fmt"
	"net/http"
	"slices"
	"time"

	"github.com/slack-go/slack"
)

// errNoReason is a call that failed and did not say why: the library takes
// such an answer for a success.
var errNoReason = errors.New("the workspace did not take it and gave no reason")

// transient are the platform's codes for its own troubles (platform
// documentation, Web API, errors common to all methods).
var transient = []string{
	"internal_error", "fatal_error", "service_unavailable", "request_timeout",
	"ratelimited", "rate_limited", "team_added_to_org",
}

// refused says whether the workspace understood the call and will not have
// it.
func refused(err error) bool {
	answer, ok := errors.AsType[slack.SlackErrorResponse](err)
	return ok && !slices.Contains(transient, answer.Err)
}

// final says whether trying again is no use.
func final(err error) bool {
	if status, ok := errors.AsType[slack.StatusCodeError](err); ok {
		return status.Code < http.StatusInternalServerError && status.Code != http.StatusTooManyRequests
	}
	return refused(err) || errors.Is(err, context.Canceled)
}

// rateLimited returns how long the platform asks to wait, if it does.
func rateLimited(err error) (time.Duration, bool) {
	limit, ok := errors.AsType[*slack.RateLimitedError](err)
	if !ok {
		return 0, false
	}
	return max(limit.RetryAfter, time.Second), true
}

// explain turns an error into one for whoever set the variables.
func explain(variable string, err error) error {
	if answer, ok := errors.AsType[slack.SlackErrorResponse](err); ok {
		switch answer.Err {
		case "invalid_auth", "not_authed", "token_revoked", "token_expired", "account_inactive":
			return fmt.Errorf("the workspace refused %s (%s): copy the token anew from the app's page", variable, answer.Err)
		case "not_allowed_token_type":
			return fmt.Errorf("%s holds a token of another kind (%s): are %s and %s exchanged?",
				variable, answer.Err, BotTokenVar, AppTokenVar)
		case "missing_scope":
			return fmt.Errorf("the token in %s lacks a scope (%s): the app's manifest names those it needs",
				variable, or(answer.Needed, answer.Err))
		}
	}
	if status, ok := errors.AsType[slack.StatusCodeError](err); ok && status.Code == http.StatusNotFound {
		return fmt.Errorf("there is no workspace at %s: %w", APIURLVar, hide(err))
	}
	return fmt.Errorf("connect to the workspace: %w", hide(err))
}
