# Exact rank tests and the Hodges-Lehmann interval. Needs base R alone; for ties all choices are listed.
x <- c(10.1, 11.2, 9.8, 12.4, 10.9, 11.7, 10.3)
y <- c(11.9, 10.6, 12.8, 13.1, 11.1, 12.2)
w <- wilcox.test(y, x, conf.int = TRUE, exact = TRUE)
print(c(w$estimate, w$conf.int, w$p.value), digits = 15)

pain_y <- c(1, 2, 1, 1, 1, 1, 1, 1, 1, 1, 2, 4, 1, 1)
pain_n <- c(3, 3, 4, 3, 1, 2, 3, 1, 1, 5, 4)
r <- rank(c(pain_n, pain_y))
sums <- combn(length(r), length(pain_n), function(i) sum(r[i]))
middle <- length(pain_n) * mean(r)
print(mean(abs(sums - middle) >= abs(sum(r[seq_along(pain_n)]) - middle) - 1e-9), digits = 15)
print(R.version.string)
