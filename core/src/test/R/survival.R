# Survival of two groups, for SurvivalReferenceTest.
# Rscript core/src/test/R/survival.R > core/src/test/resources/org/twinbar/statistics/survival.csv
library(survival)
cat("# Source: R package survival", format(packageVersion("survival")), "(survfit with conf.type log-log, survdiff,\n")
cat("# coxph with Efron ties, its score test at fixed ratios inverted by uniroot); made by core/src/test/R/survival.R\n")
cat("# Licence: figures, none. Version:", R.version.string, "\n")
cat("# Digits: 12. Tolerance: 1e-9 relative; 1e-7 for the ends of the hazard ratio, found by search in R.\n")
cat("set,quantity,at,value\n")
sets <- list(
  freireich = list(t = c(10,7,32,23,22,6,16,34,32,25,11,20,19,6,17,35,6,13,9,6,10),
                   e = c(1,1,0,1,1,1,1,0,0,0,0,0,0,1,0,0,1,1,0,0,0),
                   u = c(1,22,3,12,8,17,2,11,8,12,2,5,4,15,8,23,5,11,4,1,8), f = rep(1, 21)),
  aml = list(t = c(9,13,13,18,23,28,31,34,45,48,161), e = c(1,1,0,1,1,0,1,1,0,1,0),
             u = c(5,5,8,8,12,16,23,27,30,33,43,45), f = c(1,1,1,1,1,0,1,1,1,1,1,1)),
  leak = list(t = c(20,rep(24,7)), e = c(1,rep(0,7)), u = c(2,5,5,9,14,24,24,24), f = c(1,1,1,1,1,0,0,0)),
  dry = list(t = rep(24,5), e = rep(0,5), u = c(2,5,5,9,24), f = c(1,1,1,1,0)),
  wet = list(t = c(1,2,2,3,6), e = rep(1,5), u = c(4,24,24,24), f = rep(0,4)))
out <- function(set, quantity, at, value) cat(sprintf("%s,%s,%.12g,%.12g\n", set, quantity, at, value), sep = "")
for (name in names(sets)) {
  s <- sets[[name]]
  time <- c(s$t, s$u); event <- c(s$e, s$f); treated <- rep(1:0, c(length(s$t), length(s$u)))
  for (g in 1:0) {
    fit <- survfit(Surv(time[treated == g], event[treated == g]) ~ 1, conf.type = "log-log")
    k <- fit$n.event > 0 & fit$surv > 0
    group <- if (g == 1) "treated" else "control"
    if (any(k)) {
      out(name, paste0(group, "-survival"), fit$time[k], fit$surv[k])
      out(name, paste0(group, "-se"), fit$time[k], (fit$std.err * fit$surv)[k])
      out(name, paste0(group, "-low"), fit$time[k], fit$lower[k])
      out(name, paste0(group, "-high"), fit$time[k], fit$upper[k])
      limit <- min(max(s$t), max(s$u))
      r <- summary(fit, rmean = limit)$table
      out(name, paste0(group, "-rmean"), limit, r[["rmean"]])
      out(name, paste0(group, "-rmean-se"), limit, r[["se(rmean)"]])
    }
  }
  d <- survdiff(Surv(time, event) ~ treated)
  out(name, "log-rank", 0, d$chisq)
  out(name, "expected", 0, d$exp[2])
  z <- function(b) suppressWarnings(coxph(Surv(time, event) ~ treated, init = b,
                                          control = coxph.control(iter.max = 0))$score)
  out(name, "score", 0, z(0))
  cox <- suppressWarnings(coxph(Surv(time, event) ~ treated))
  b <- unname(coef(cox))
  limit <- qnorm(0.975)^2
  if (sum(s$e) > 0 && sum(s$f) > 0) {
    out(name, "ratio", 0, exp(unname(coef(coxph(Surv(time, event) ~ treated, control = coxph.control(eps = 1e-12))))))
  }
  if (sum(s$e) > 0) out(name, "low", 0, exp(uniroot(function(x) z(x) - limit, c(-8, max(min(b, 8), -7) - 1e-3), tol = 1e-11)$root))
  if (sum(s$f) > 0) out(name, "high", 0, exp(uniroot(function(x) z(x) - limit, c(min(max(b, -8), 7) + 1e-3, 8), tol = 1e-11)$root))
}
# In strata: a block number for each specimen beside the sets above, and one block that holds treated ones alone.
strata <- list(
  freireich = rep(1:3, length.out = 42),
  aml = c(rep(1:2, length.out = 11), rep(1:2, length.out = 12)),
  leak = c(1,1,2,2,3,3,4,4, 1,1,2,2,3,3,3,1),
  dry = c(1,1,2,2,2, 1,2,1,2,2))
for (name in names(strata)) {
  s <- sets[[name]]; b <- strata[[name]]
  time <- c(s$t, s$u); event <- c(s$e, s$f); treated <- rep(1:0, c(length(s$t), length(s$u)))
  d <- survdiff(Surv(time, event) ~ treated + strata(b))
  out(name, "strata-log-rank", 0, d$chisq)
  out(name, "strata-expected", 0, sum(as.matrix(d$exp)[2, ]))
  z <- function(x) suppressWarnings(coxph(Surv(time, event) ~ treated + strata(b), init = x,
                                          control = coxph.control(iter.max = 0))$score)
  out(name, "strata-score", 0, z(0))
  beta <- unname(coef(suppressWarnings(coxph(Surv(time, event) ~ treated + strata(b)))))
  if (sum(s$e) > 0) {
    out(name, "strata-ratio", 0, exp(unname(coef(coxph(Surv(time, event) ~ treated + strata(b), control = coxph.control(eps = 1e-12))))))
    out(name, "strata-low", 0, exp(uniroot(function(x) z(x) - limit, c(-8, beta - 1e-3), tol = 1e-11)$root))
  }
  out(name, "strata-high", 0, exp(uniroot(function(x) z(x) - limit, c(max(beta, -8) + 1e-3, 8), tol = 1e-11)$root))
}
t <- survfit(Surv(c(0,4,4,8,8,12,24,24), c(4,8,12,12,24,24,NA,NA), type = "interval2") ~ 1)
out("turnbull", "survival", t$time, t$surv)
# Difference of restricted means up to the shorter of the two longest watches, normal limits; rows of checks.csv, by hand:
# for (name in c("freireich", "aml")) { s <- sets[[name]]; l <- min(max(s$t), max(s$u))
#   m <- function(t, e) summary(survfit(Surv(t, e) ~ 1), rmean = l)$table[c("rmean", "se(rmean)")]
#   a <- m(s$t, s$e); b <- m(s$u, s$f); d <- a[[1]] - b[[1]]; h <- qnorm(.975) * sqrt(a[[2]]^2 + b[[2]]^2); print(c(l, d, d - h, d + h), digits = 12) }
