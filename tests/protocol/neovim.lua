-- Neovim as a client of the language server. Ends with 0 only if all holds. Written for 0.7 and newer:
-- `vim.lsp.start` came with 0.8, hence `start_client` and `buf_attach_client`.
local function fail(why)
    io.stderr:write(why .. '\n')
    vim.cmd('cquit 1')
end

vim.filetype.add({ extension = { case = 'casewright' } })
vim.cmd('edit ' .. vim.fn.fnameescape(vim.env.CASEWRIGHT_FILE))

local ready = false
local client = vim.lsp.start_client({
    name = 'casewright',
    cmd = vim.split(vim.env.CASEWRIGHT_SERVER, '\n'),
    root_dir = vim.fn.fnamemodify(vim.env.CASEWRIGHT_FILE, ':h'),
    on_init = function() ready = true end,
    on_error = function(code, err) fail('client error ' .. code .. ': ' .. vim.inspect(err)) end,
})
if not client then fail('the client did not start') end
if not vim.wait(10000, function() return ready end, 20) then fail('no answer to initialize') end
vim.lsp.buf_attach_client(0, client)

if not vim.wait(10000, function() return #vim.diagnostic.get(0) > 0 end, 20) then fail('no diagnostic') end
local found = vim.diagnostic.get(0)
if #found ~= 1 or found[1].lnum ~= 1 or found[1].col ~= 10 then fail('wrong diagnostics: ' .. vim.inspect(found)) end

vim.lsp.stop_client(client)
vim.wait(3000, function() return vim.lsp.client_is_stopped(client) end, 20)
io.stdout:write(found[1].message .. '\n')
vim.cmd('qall!')
