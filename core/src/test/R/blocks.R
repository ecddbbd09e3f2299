# Oracle values for org.twinbar.statistics.blocks: prints the rows of checks.csv whose source is R.
# Run: Rscript core/src/test/R/blocks.R
# Made with R 4.2.2, lme4 1.1-31 and pbkrtest 0.5.2.
suppressMessages({library(lme4); library(pbkrtest)})
row <- function(id, quantity, inputs, expected, tolerance, source)
  cat(sprintf('%s,%s,%s,%.12g,%s,%s\n', id, quantity, inputs, expected, tolerance, source))
src <- "R 4.2.2 lme4 1.1-31 pbkrtest 0.5.2"
ctl <- lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-10), check.conv.singular = "ignore", check.conv.grad = "ignore")
report <- function(name, f, d) {
  m <- suppressMessages(lmer(f, d, REML = TRUE, control = ctl))
  se <- sqrt(as.matrix(vcovAdj(m))[2, 2]); df <- get_Lb_ddf(m, c(0, 1))
  row(paste0("R-", name, "-effect"), "effect", name, fixef(m)[2], "1e-5rel", src)
  row(paste0("R-", name, "-se"), "adjusted standard error", name, se, "1e-4rel", src)
  row(paste0("R-", name, "-df"), "Kenward-Roger df", name, df, "2e-3rel", src)
  v <- as.data.frame(VarCorr(m))
  for (i in seq_len(nrow(v))) row(paste0("R-", name, "-var", i), paste("variance", v$grp[i]), name, v$vcov[i], "1e-4rel", src)
}
d <- data.frame(y = c(41.2, 42.0, 41.1, 46.0, 45.1, 46.9,  43.9, 44.2, 43.0, 47.8, 48.9, 47.1,  40.0, 40.9, 41.8, 44.2, 45.6, 44.9,  42.5, 42.0, 43.6, 46.5, 47.7, 46.1),
                t = rep(rep(0:1, each = 3), 4), b = factor(rep(1:4, each = 6)))
report("two blocks", y ~ t + (1 | b), d[d$b %in% 1:2, ][-c(2, 9, 10), ])
e <- d; e$y <- e$y + rep(c(0, 0.9, -0.6, 0.2), each = 6) * 2 * e$t
report("unequal blocks", y ~ t + (1 | b) + (1 | b:t), e[-c(1, 2, 8, 15, 16, 17, 24), ])
# Units nested: a run is wholly treated or wholly control; unequal numbers.
u <- data.frame(y = c(50.1, 51.0, 49.2,  47.3, 47.9,  52.0, 52.4, 51.1, 53.0,  44.0, 45.1,  46.6, 45.0, 46.1,  43.0, 42.2, 44.1),
                t = rep(c(1, 1, 1, 0, 0, 0), c(3, 2, 4, 2, 3, 3)), r = factor(rep(1:6, c(3, 2, 4, 2, 3, 3))))
report("units", y ~ t + (1 | r), u)
m <- data.frame(y = c(50.1, 51.0, 49.2,  47.3, 47.9,  52.0, 52.4, 51.1, 53.0,  44.0, 45.1, 46.6, 45.0, 46.1),
                t = rep(c(1, 0), c(9, 5)), x = factor(c(1, 1, 1, 2, 2, 3, 3, 3, 3, 1, 1, 1, 1, 1)))
report("mixes", y ~ t + (0 + t | x), m)
z <- data.frame(y = c(50.1, 47.0, 53.2,  48.3, 52.9,  51.0, 49.4, 52.1, 48.0,  44.0, 48.1,  46.6, 43.0, 47.1,  47.0, 43.2, 45.1),
                t = u$t, r = u$r)
report("units without scatter between", y ~ t + (1 | r), z)
