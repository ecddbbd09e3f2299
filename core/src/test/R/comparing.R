# Oracle values for org.twinbar.decision: mixes and units from their columns to the interval. Prints rows of checks.csv.
# Run: Rscript core/src/test/R/comparing.R
# Made with R 4.2.2, lme4 1.1-31 and pbkrtest 0.5.2.
suppressMessages({library(lme4); library(pbkrtest)})
src <- paste0("R ", getRversion(), " core/src/test/R/comparing.R")
row <- function(id, quantity, inputs, expected, tolerance, how)
  cat(sprintf('%s,%s,"%s",%.12g,%s,"%s: %s"\n', id, quantity, inputs, expected, tolerance, src, how))
ctl <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10), check.conv.singular = "ignore", check.conv.grad = "ignore")
m <- data.frame(y = c(50.1, 51.0, 49.2,  47.3, 47.9,  52.0, 52.4, 51.1, 53.0,  44.0, 45.1, 46.6, 45.0, 46.1),
                t = rep(c(1, 0), c(9, 5)), x = factor(c(1, 1, 1, 2, 2, 3, 3, 3, 3, 1, 1, 1, 1, 1)))
mixes <- function(name, y, back) {
  d <- m; d$y <- y
  f <- suppressMessages(lmer(y ~ t + (0 + t | x), d, REML = TRUE, control = ctl))
  e <- fixef(f)[[2]]; se <- sqrt(as.matrix(vcovAdj(f))[2, 2]); df <- get_Lb_ddf(f, c(0, 1))
  how <- "lmer, Kenward-Roger"
  row(paste0("mixes-", name), "effect", "three mixes against five controls", back(e), "1e-6rel", how)
  row(paste0("mixes-", name, "-df"), "degrees of freedom", "three mixes against five controls", df, "2e-3rel", how)
  row(paste0("mixes-", name, "-low"), "lower end", "three mixes against five controls", back(e - qt(.975, df) * se), "1e-4rel", how)
  row(paste0("mixes-", name, "-high"), "upper end", "three mixes against five controls", back(e + qt(.975, df) * se), "1e-4rel", how)
}
mixes("difference", m$y, identity)
mixes("ratio", log(m$y), exp)
u <- data.frame(y = c(50.1, 51.0, 49.2,  47.3, 47.9,  52.0, 52.4, 51.1, 53.0,  44.0, 45.1,  46.6, 45.0, 46.1,  43.0, 42.2, 44.1),
                r = rep(1:6, c(3, 2, 4, 2, 3, 3)))
means <- tapply(u$y, u$r, mean)
w <- t.test(means[1:3], means[4:6])
row("units-difference", "difference", "three runs of each kind", unname(w$estimate[1] - w$estimate[2]), "1e-9rel", "t.test of the runs' means")
row("units-low", "lower end", "three runs of each kind", w$conf.int[1], "1e-9rel", "t.test of the runs' means")
row("units-high", "upper end", "three runs of each kind", w$conf.int[2], "1e-9rel", "t.test of the runs' means")
row("units-p", "p", "three runs of each kind", w$p.value, "1e-9rel", "t.test of the runs' means")
